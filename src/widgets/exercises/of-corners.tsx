/** Corners, angles and where a groove shows: the exercises that share a part of the calculation, so that a page fetches no other. */

import { e3 } from '../../exercises/tasks/e3.ts';
import { e7 } from '../../exercises/tasks/e7.ts';
import { e8 } from '../../exercises/tasks/e8.ts';
import { e9 } from '../../exercises/tasks/e9.ts';
import { e11 } from '../../exercises/tasks/e11.ts';
import { e18 } from '../../exercises/tasks/e18.ts';
import { e19 } from '../../exercises/tasks/e19.ts';
import { e22 } from '../../exercises/tasks/e22.ts';
import { e23 } from '../../exercises/tasks/e23.ts';
import { CornerGiven } from '../../figures/grooves/CornerGiven.tsx';
import { WebGiven } from '../../figures/grooves/WebGiven.tsx';
import { pageOf } from './ExercisePage.tsx';

export const E3 = pageOf(e3);
export const E7 = pageOf(e7);
export const E8 = pageOf(e8);
export const E9 = pageOf(e9, CornerGiven);
export const E11 = pageOf(e11);
export const E18 = pageOf(e18, WebGiven);
export const E19 = pageOf(e19);
export const E22 = pageOf(e22);
export const E23 = pageOf(e23);
