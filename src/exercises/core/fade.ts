/**
 * Fading: a worked example loses its last line first, then the last two, until only the question is left. At each line the
 * learner is asked which rule the step is.
 */

import type { Line, Task } from './exercise.ts';
import { type Principle, principles } from './principles.ts';

/** How many stages a task has: whole, and one for each line that can be missing. */
export const stagesOf = ({ lines }: Task): number => lines.length + 1;

/** Whether a line is left to the learner when `missing` lines are. */
export const isMissing = ({ lines }: Task, index: number, missing: number): boolean =>
  index >= lines.length - missing;

/**
 * Three rules to pick from for one step: its own, and two others; those of other steps of the task first, since they are
 * the ones to be told apart. Always in the order of the list, so the place says nothing.
 */
export function rulesToPick({ lines }: Task, { principle }: Line): readonly Principle[] {
  const own = principles.indexOf(principle);
  const nearby = [...principles.keys()]
    .sort((a, b) => Math.abs(a - own) - Math.abs(b - own) || a - b)
    .map((at) => principles[at]!);
  const others = [...new Set([...lines.map((line) => line.principle), ...nearby])].filter(
    (one) => one !== principle,
  );
  const chosen = [principle, ...others.slice(0, 2)];
  return principles.filter((one) => chosen.includes(one));
}
