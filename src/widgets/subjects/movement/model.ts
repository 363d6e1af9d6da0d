/** Everything that is computed of movement, for who fetches it late. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';

export const movementModel = modelOf(movement);
