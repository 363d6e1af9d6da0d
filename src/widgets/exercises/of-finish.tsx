/** Finish: the exercise whose part of the calculation no other needs, so that no page fetches it in vain. */

import { e25 } from '../../exercises/tasks/e25.ts';
import { pageOf } from './ExercisePage.tsx';

export const E25 = pageOf(e25);
