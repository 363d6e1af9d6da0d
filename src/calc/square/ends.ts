/**
 * Ends out of square, and opposite walls of unequal length.
 *
 *   s = w tan e            step of an end over the width of the cut
 *   d = 2 e                how far two parts differ at worst, each cut to its own mark
 *   q = asin(d / (2 b))    lean of the end walls of a box whose long walls differ by d, its diagonals clamped equal
 *
 *        ________a________          With equal diagonals four such walls make a trapezoid: the end walls,
 *       /                 \         b long, lean in at the shorter long wall, each by half the difference.
 *      /b                 b\
 *     /_______a + d_________\
 *
 * Symbols: w width of the cut, b end wall, d difference (mm); e angle error (degrees) or error of a length (mm).
 * Held fixed: the parts are straight and keep their lengths; the corners can turn.
 */
import { relation } from '../core/relation.ts';

/** Step across an end that is out of square, mm. */
export const endStep = relation({
  id: 'end-step',
  title: 'Step of an end that is out of square',
  result: { symbol: 's', name: 'step across the end', unit: 'mm' },
  inputs: {
    w: { name: 'width of the cut', unit: 'mm', range: [5, 1000] },
    e: { name: 'error of each cut', unit: 'deg', range: [0, 2] },
  },
  expression: 'w * tan(e)',
  compute: ({ w, e }) => w * Math.tan((e * Math.PI) / 180),
  evidence: 'geometry',
  source: 'A slope of so many degrees over the width of the part.',
});

/** How far two parts that should be alike differ at worst, mm, each cut to its own mark. */
export const lengthsApart = relation({
  id: 'lengths-apart',
  title: 'Two parts, each cut to its own mark',
  result: { symbol: 'd', name: 'difference at worst', unit: 'mm' },
  inputs: { e: { name: 'error of a length', unit: 'mm', range: [0, 2] } },
  expression: '2 * e',
  compute: ({ e }) => 2 * e,
  evidence: 'geometry',
  source: 'One part is off one way by the whole error, the other the other way.',
  limits: 'Cut against one stop the two share its error, and differ only by how well they are held to it.',
});

/** Lean of the end walls where the long walls differ and the diagonals are clamped equal, degrees. */
export const leanOfUnequalWalls = relation({
  id: 'lean-of-unequal-walls',
  title: 'Lean of the ends where the long walls differ',
  result: { symbol: 'q', name: 'lean of each end wall', unit: 'deg' },
  inputs: {
    d: { name: 'difference of the long walls', unit: 'mm', range: [0, 10] },
    b: { name: 'length of an end wall', unit: 'mm', range: [20, 1000] },
  },
  expression: 'asin(d / (2 * b))',
  compute: ({ d, b }) => (Math.asin(d / (2 * b)) * 180) / Math.PI,
  evidence: 'geometry',
  source: 'Equal diagonals make the four walls a trapezoid, with half the difference at each end.',
  limits: 'No clamp takes it out: the diagonals are equal already.',
});
