/**
 * What a change of moisture does to a plain miter.
 *
 * Both walls change in thickness, across the grain, and hardly at all in length. A cut that was made at 45° is then no
 * longer at 45°, and the faces of the corner part by a wedge.
 *
 *   shrinking by ΔM points   the outer edges touch, the inside opens by   g = √2 t C ΔM
 *   swelling by as much      the inside touches, the outer edges open by the same
 *
 * Symbols: t thickness of both walls (mm), C movement of the thickness per 1 % moisture content (1), ΔM fall in
 * moisture content (percent points), g width of the wedge where it is widest (mm).
 * Held fixed: the walls are free to move; movement along the grain is taken as none.
 */
import { relation } from '../core/relation.ts';

/** Widest part of the wedge between the faces of a miter whose walls have changed in thickness, mm. */
export const miterSeasonGap = relation({
  id: 'miter-season-gap',
  title: 'Wedge in a miter as its walls change in thickness',
  result: { symbol: 'g', name: 'width of the wedge where it is widest', unit: 'mm' },
  inputs: {
    t: { name: 'wall thickness', unit: 'mm', range: [1, 30] },
    C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    dM: { name: 'fall in moisture content', unit: '%', points: true, range: [0, 8], tex: '\\Delta M' },
  },
  expression: 'sqrt(2) t C dM',
  compute: ({ t, C, dM }) => Math.SQRT2 * t * C * dM,
  evidence: 'derived',
  source:
    'The faces turn as the thickness changes and the length does not; coefficients of the Wood Handbook.',
  limits: 'For walls that are free. A glued corner cannot open so far; it is strained instead.',
});
