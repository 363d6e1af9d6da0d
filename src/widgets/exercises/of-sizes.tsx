/** Sizes and the board: the exercises that share a part of the calculation, so that a page fetches no other. */
import { e1 } from '../../exercises/tasks/e1.ts';
import { e2 } from '../../exercises/tasks/e2.ts';
import { e6 } from '../../exercises/tasks/e6.ts';
import { e13 } from '../../exercises/tasks/e13.ts';
import { e16 } from '../../exercises/tasks/e16.ts';
import { e21 } from '../../exercises/tasks/e21.ts';
import { SawnGiven } from '../../figures/lid/SawnGiven.tsx';
import { pageOf } from './ExercisePage.tsx';

export const E1 = pageOf(e1);
export const E2 = pageOf(e2);
export const E6 = pageOf(e6);
export const E13 = pageOf(e13);
export const E16 = pageOf(e16);
export const E21 = pageOf(e21, SawnGiven);
