/** The far edge of a jig’s steps and the rim: apart from the other corners, which more pages would carry in vain. */

import { e19 } from '../../exercises/tasks/e19.ts';
import { e23 } from '../../exercises/tasks/e23.ts';
import { pageOf } from './ExercisePage.tsx';

export const E19 = pageOf(e19);
export const E23 = pageOf(e23);
