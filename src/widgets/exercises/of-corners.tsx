/** Corners, angles and where a groove shows: the exercises that share a part of the calculation, so that a page fetches no other. */

import { e3 } from '../../exercises/tasks/e3.ts';
import { e7 } from '../../exercises/tasks/e7.ts';
import { e8 } from '../../exercises/tasks/e8.ts';
import { e9 } from '../../exercises/tasks/e9.ts';
import { e11 } from '../../exercises/tasks/e11.ts';
import { CornerGiven } from '../../figures/grooves/CornerGiven.tsx';
import { pageOf } from './ExercisePage.tsx';

export const E3 = pageOf(e3);
export const E7 = pageOf(e7);
export const E8 = pageOf(e8);
export const E9 = pageOf(e9, CornerGiven);
export const E11 = pageOf(e11);
