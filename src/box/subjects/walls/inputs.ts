/** The walls, and what pushes on them. */
import { number, size } from '../../core/inputs.ts';

export const wallsInputs = {
  /** Wall thickness, mm, the same on all four sides. */
  wall: size('wall thickness', { low: 3, high: 25, start: { mm: 8, inch: 5 / 16 } }),
  /** A push by thumb or knuckle that the box has to take, N. */
  push: number('push by hand', 'force', {
    low: 5,
    high: 200,
    step: 5,
    start: 50,
    help: 'A firm thumb pushes with about 50 N (11 lbf)§; not measured here.',
  }),
};
