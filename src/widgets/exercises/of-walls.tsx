/** Walls, their grooves and the bottom: the exercises that share a part of the calculation, so that a page fetches no other. */

import { e14 } from '../../exercises/tasks/e14.ts';
import { e18 } from '../../exercises/tasks/e18.ts';
import { e20 } from '../../exercises/tasks/e20.ts';
import { WebGiven } from '../../figures/grooves/WebGiven.tsx';
import { pageOf } from './ExercisePage.tsx';

export const E14 = pageOf(e14);
export const E18 = pageOf(e18, WebGiven);
export const E20 = pageOf(e20);
