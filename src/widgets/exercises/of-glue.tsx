/** Glue: the exercise whose part of the calculation no other needs, so that no page fetches it in vain. */

import { e22 } from '../../exercises/tasks/e22.ts';
import { pageOf } from './ExercisePage.tsx';

export const E22 = pageOf(e22);
