/** Wood that moves: the exercises that share a part of the calculation, so that a page fetches no other. */

import { e4 } from '../../exercises/tasks/e4.ts';
import { e5 } from '../../exercises/tasks/e5.ts';
import { e10 } from '../../exercises/tasks/e10.ts';
import { e12 } from '../../exercises/tasks/e12.ts';
import { e15 } from '../../exercises/tasks/e15.ts';
import { e17 } from '../../exercises/tasks/e17.ts';
import { e24 } from '../../exercises/tasks/e24.ts';
import { SlantGiven } from '../../figures/board/SlantGiven.tsx';
import { pageOf } from './ExercisePage.tsx';

export const E4 = pageOf(e4);
export const E5 = pageOf(e5);
export const E10 = pageOf(e10);
export const E12 = pageOf(e12);
export const E15 = pageOf(e15, SlantGiven);
export const E17 = pageOf(e17);
export const E24 = pageOf(e24);
