/** Where a reader goes on in the course: the lesson they were in last, or the next one that is not done. */
import type { Progress } from './progress.ts';

/** A lesson as far as its place goes: its address, and the names of its steps in order. */
export interface CourseLesson {
  readonly id: string;
  readonly steps: readonly string[];
}

/** Indexes into the course and into the lesson's steps. */
export interface Place {
  readonly lesson: number;
  readonly step: number;
}

/**
 * The place to go on. A lesson cut into no steps is not known to be done, and so is passed over.
 * @param last the lesson the reader was in last; none: they have not begun
 * @returns undefined before the course is begun and after its end
 */
export function placeIn(
  course: readonly CourseLesson[],
  progress: Progress,
  last: string | undefined,
): Place | undefined {
  const from = course.findIndex(({ id }) => id === last);
  if (from === -1) return undefined;
  const around = [...course.keys()].map((i) => (from + i) % course.length);
  for (const lesson of around) {
    const { id, steps } = course[lesson]!;
    const { at, steps: states = {} } = progress[id] ?? {};
    const open = steps.flatMap((name, step) => (states[name] ? [] : [step]));
    if (open.length === 0) continue;
    const reached = at === undefined ? -1 : steps.indexOf(at);
    return { lesson, step: open.find((step) => step >= reached) ?? open[0]! };
  }
  return undefined;
}
