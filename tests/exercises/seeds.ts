/** Learners for the tests: a thousand, spread over four classes. */

import type { Exercise } from '../../src/exercises/core/exercise.ts';
import { taskFor } from '../../src/exercises/core/task.ts';
import { exercises } from '../../src/exercises/index.ts';
import type { UnitSystem } from '../../src/units/index.ts';

export const learners = Array.from({ length: 1000 }, (_, at) => ({
  className: ['7b', 'Evening class', 'Box making, spring', 'Ä 12'][at % 4]!,
  number: 1 + Math.floor(at / 4),
}));
export const systems: readonly UnitSystem[] = ['mm', 'inch'];
export const byId = (id: string): Exercise => exercises.find((one) => one.id === id)!;
export const tasksOf = (id: string, system: UnitSystem) =>
  learners.map((learner) => taskFor(byId(id), learner, system));
