/**
 * What is taken off a lid that jams, and what is put on one that is loose.
 *
 *   off each edge  x = (W C u + c − p)/2          strip in thickness  s = d − T − c          thickness over a year  T C_t u
 *
 * Symbols: W width of the lid, taken out and dry (mm), C its movement per 1 % MC, u rise of its moisture from today to
 * the dampest (points), c play wanted on that day (mm), p play today (mm, both sides together; below 0 the lid, taken
 * out, is wider than its grooves), d width of the groove, T thickness of the edge in it (mm), C_t movement of the
 * thickness per 1 % MC.
 * Held fixed: the grooves, because walls do not change length; the lid flat, and equally moist throughout.
 * Exact here; the caller rounds what is taken off up to a tenth, and what is put on down.
 */
import { relation } from '../core/relation.ts';

/** What is planed off each long edge, mm, so that the lid still runs on its dampest day. */
export const offEachEdge = relation({
  id: 'plane-off-each-edge',
  title: 'What to plane off each edge of a lid that jams',
  result: { symbol: 'x', name: 'off each edge', unit: 'mm' },
  inputs: {
    W: { name: 'width across the grain', unit: 'mm', range: [10, 600] },
    C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    u: { name: 'rise in moisture content from today', unit: '%', points: true, range: [0, 30] },
    c: { name: 'play on the dampest day', unit: 'mm', range: [0, 2] },
    p: { name: 'play today in all', unit: 'mm', range: [-10, 20] },
  },
  expression: '(W * C * u + c - p) / 2',
  compute: ({ W, C, u, c, p }) => (W * C * u + c - p) / 2,
  evidence: 'derived',
  source: 'The play that today asks for, less what is there; half at each edge keeps the pull in the middle.',
  limits:
    'Below 0 there is nothing to plane: the lid has play enough, and what holds it is another thing. The lid must be dry through and flat, and a coefficient as printed holds from 6 to 14 % moisture content.',
});

/** Thickness of a strip, mm, that takes up what a lid or a bottom is loose in its groove, up and down; leaves `c` so that it still moves. */
export const shimThickness = relation({
  id: 'shim-thickness',
  title: 'Strip that quiets a loose edge',
  result: { symbol: 's', name: 'thickness of the strip', unit: 'mm' },
  inputs: {
    d: { name: 'width of the groove', unit: 'mm', range: [1, 30] },
    T: { name: 'thickness of the edge in it', unit: 'mm', range: [1, 30] },
    c: { name: 'slip that stays', unit: 'mm', range: [0, 2] },
  },
  rangesGiven: ({ d }) => ({ T: [1, d] }),
  expression: 'd - T - c',
  compute: ({ d, T, c }) => d - T - c,
  evidence: 'geometry',
  source: 'Groove less edge is slip; what is more than is wanted is filled.',
  limits: 'Below 0 the edge has no slip to spare, and a strip would make it bind.',
});

/** How far the thickness of an edge goes over a year, mm. */
export const thicknessOverYear = relation({
  id: 'thickness-over-the-year',
  title: 'How far a thickness moves in a year',
  result: { symbol: 'x', name: 'movement of the thickness', unit: 'mm' },
  inputs: {
    T: { name: 'thickness', unit: 'mm', range: [1, 30] },
    C_t: { name: 'movement of the thickness per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    M_d: { name: 'moisture content at the driest', unit: '%', range: [6, 14] },
    M_w: { name: 'moisture content at the dampest', unit: '%', range: [6, 14] },
  },
  expression: 'T * C_t * (M_w - M_d)',
  compute: ({ T, C_t, M_d, M_w }) => T * C_t * (M_w - M_d),
  evidence: 'published',
  source: 'wood-handbook-2010',
  limits: 'Holds from 6 to 14 % moisture content; the coefficient is an average, and single boards differ.',
});
