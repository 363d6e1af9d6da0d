/** Sizes and the board: the exercises that share a part of the calculation, so that a page fetches no other. */
import { e1 } from '../../exercises/tasks/e1.ts';
import { e2 } from '../../exercises/tasks/e2.ts';
import { e6 } from '../../exercises/tasks/e6.ts';
import { pageOf } from './ExercisePage.tsx';

export const E1 = pageOf(e1);
export const E2 = pageOf(e2);
export const E6 = pageOf(e6);
