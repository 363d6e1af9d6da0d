/**
 * When a question comes back: by FSRS, the Free Spaced Repetition Scheduler, version 6, with its published weights
 * (content/sources/fsrs-6, after content/sources/ye-2022). From each answer it reckons how long a memory lasts, and asks
 * again when nine in ten would still know (`request_retention`). Fetched late: it weighs more than what it serves.
 */
import { FSRSAlgorithm, type FSRSState, Rating } from 'ts-fsrs';
import type { Answer, Grade } from './answers.ts';

/** The longest wait, days: a wrong clock delays a question by no more than a year. */
export const longestWait = 365;
/** The share of questions that is to be known when they are asked. */
export const retention = 0.9;

const scheduler = new FSRSAlgorithm({
  request_retention: retention,
  maximum_interval: longestWait,
  enable_fuzz: false,
  enable_short_term: false,
});
/** A right answer that was a guess shows no memory. */
const ratings = { right: Rating.Good, guessed: Rating.Again, wrong: Rating.Again } as const satisfies Record<
  Grade,
  Rating
>;

/**
 * The day a question is asked again, see `day.ts`.
 * @param given its answers in their order, one at least
 * @param now today; an answer from a later day was given under a wrong clock, and its question is due at once
 */
export function dueOn(given: readonly Answer[], now: number): number {
  let memory: FSRSState | null = null;
  let last = given[0]![0];
  let wait = 0;
  for (const [day, grade] of given) {
    // A clock that was set back has not turned back what was learned.
    const elapsed = Math.max(0, day - last);
    memory = scheduler.next_state(memory, elapsed, ratings[grade]);
    wait = scheduler.next_interval(memory.stability, elapsed);
    last = day;
  }
  return last > now ? now : last + wait;
}
