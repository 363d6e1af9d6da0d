/** The wood of the box, and how it is sawn. */
import { choice, number } from '../../core/inputs.ts';
import { woodLabel, woodNote } from '../../wood/labels.ts';
import { woods } from '../../wood/woods.ts';

export const movementInputs = {
  /** Wood id, see `box/wood/woods.ts`. */
  species: choice(
    'wood',
    Object.fromEntries(woods.map((wood) => [wood.id, woodLabel(wood)])),
    'black-cherry',
    { note: woodNote },
  ),
  /** Angle between growth rings and the wide face of bottom and lid. */
  ringAngle: number('growth rings to the face', 'angle', {
    low: 0,
    high: 90,
    step: 5,
    start: 0,
    help: '0° is flat-sawn, 90° quarter-sawn.',
  }),
};
