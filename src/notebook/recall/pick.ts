/** Which questions are asked: first those that are due, the most overdue before the others, then those never asked. Pure. */
import type { Answers } from './answers.ts';
import { dueOn } from './schedule.ts';

/** How many are asked before a lesson. */
export const mostAtOnce = 3;

export interface Due {
  /** Asked before and due today or earlier, the most overdue first. */
  readonly due: readonly string[];
  /** Never asked, in the order of the course. */
  readonly fresh: readonly string[];
  /** The next day on which one that was asked before is due, after today. */
  readonly next: number | undefined;
}

/**
 * @param ids of the questions that may be asked, in the order of the course
 * @param now today
 */
export function dueOf(ids: readonly string[], answers: Answers, now: number): Due {
  const asked = ids.flatMap((id) => (answers[id] ? [{ id, day: dueOn(answers[id], now) }] : []));
  const later = asked.filter(({ day }) => day > now);
  return {
    due: asked
      .filter(({ day }) => day <= now)
      .sort((one, other) => one.day - other.day)
      .map(({ id }) => id),
    fresh: ids.filter((id) => !answers[id]),
    next: later.length > 0 ? Math.min(...later.map(({ day }) => day)) : undefined,
  };
}

/** The three of a lesson. */
export const pickThree = ({ due, fresh }: Due): readonly string[] => [...due, ...fresh].slice(0, mostAtOnce);
