/** Wood that moves: the exercises that share a part of the calculation, so that a page fetches no other. */

import { e4 } from '../../exercises/tasks/e4.ts';
import { e5 } from '../../exercises/tasks/e5.ts';
import { e10 } from '../../exercises/tasks/e10.ts';
import { e12 } from '../../exercises/tasks/e12.ts';
import { pageOf } from './ExercisePage.tsx';

export const E4 = pageOf(e4);
export const E5 = pageOf(e5);
export const E10 = pageOf(e10);
export const E12 = pageOf(e12);
