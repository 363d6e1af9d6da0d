/**
 * Cup of a piece whose faces are not equally moist; symbols and the other causes of cup stand in `cup.ts`.
 *
 *   c = C δM w²/(8T)
 */
import { relation } from '../core/relation.ts';

/** Cup of a free piece whose faces differ in moisture. */
export const cupFromFaces = relation({
  id: 'cup-from-faces',
  title: 'Cup from one face drier than the other',
  result: { symbol: 'c', name: 'depth of the cup', unit: 'mm' },
  inputs: {
    C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    dM: {
      name: 'moisture of one face minus the other',
      unit: '%',
      points: true,
      range: [-10, 10],
      tex: '\\delta M',
    },
    w: { name: 'width', unit: 'mm', range: [5, 400] },
    T: { name: 'thickness', unit: 'mm', range: [1, 100] },
  },
  // Up to a depth of a tenth of the width, where the arc is within 4 % of this.
  rangesGiven: ({ C, w, T }) => ({ dM: [(-0.8 * T) / (C * w), (0.8 * T) / (C * w)] }),
  expression: 'C * dM * w^2 / (8 T)',
  compute: ({ C, dM, w, T }) => (C * dM * w * w) / (8 * T),
  evidence: 'derived',
  source:
    'A straight-line difference through the thickness bends the piece to a circle; the depth of its arc.',
  limits: 'Free piece, shallow arc. For a curved moisture profile take the straight line that bends as much.',
});
