/**
 * What measurements of a piece say of its movement: the movement per point of moisture that was seen, and how the rings
 * would have to lie for it.
 *
 *   C = b/W          θ = arcsin √s, s = (C_T − C)/(C_T − C_R)
 *
 * Symbols: b change of the piece per point of moisture (mm), W its size (mm), C movement per point as a fraction, C_T and
 * C_R along and across the rings, θ angle of the rings to the face.
 */
import { relation } from '../core/relation.ts';

/** Movement per point from how much a piece of that size changes per point. */
export const movementSeen = relation({
  id: 'movement-seen',
  title: 'Movement per point, from what was measured',
  result: { symbol: 'C', name: 'movement per 1 % moisture content', unit: '1' },
  inputs: {
    b: { name: 'change of size per point of moisture', unit: 'mm', range: [-2, 2] },
    W: { name: 'size across the grain', unit: 'mm', range: [10, 600] },
  },
  expression: 'b / W',
  compute: ({ b, W }) => b / W,
  evidence: 'geometry',
  source: 'The change as a share of the size.',
  limits: 'As good as the moisture: air tells what the wood goes to, a meter what it has.',
});

/** Angle of the rings to the face, degrees, at which wood of this kind moves as was seen; C between C_R and C_T. */
export const ringAngleSeen = relation({
  id: 'ring-angle-seen',
  title: 'Ring angle that would move as was measured',
  result: { symbol: 'theta', tex: '\\theta', name: 'angle of the rings to the face', unit: 'deg' },
  inputs: {
    s: {
      name: 'place of the movement, from along the rings (0) to across them (1)',
      unit: '1',
      range: [0, 1],
    },
  },
  expression: 'asin(sqrt(s))',
  compute: ({ s }) => (Math.asin(Math.sqrt(s)) * 180) / Math.PI,
  evidence: 'derived',
  source: 'The movement of the width by ring angle, solved for the angle.',
  limits: 'Boards of one kind differ as much as rings do: a look at the end grain decides.',
});
