/**
 * What small errors of angle and length do to a box.
 *
 *   g = t √2 sin(8 e)                last corner of eight miters that are all off the same way
 *   g = t √2 sin(√8 e)               the same, when each of the eight errors is its own
 *   g = d / √2                       miter that opens when one of two opposite parts is d too long
 *   s = w tan(e)                     step of an end that is out of square, over the width w
 *   Δ = 4 a b sin(e) / (d₁ + d₂)     difference of the diagonals of a racked rectangle
 *
 * Symbols: t thickness at the miter, w width of the cut, a and b the sides, d too much length (mm); e angle error (degrees).
 * Held fixed: the parts are straight and keep their lengths.
 */
import { relation } from '../core/relation.ts';

const radians = Math.PI / 180;
const error = { name: 'error of each cut', unit: 'deg', range: [0, 2] } as const;
const thickness = { name: 'thickness at the miter', unit: 'mm', range: [1, 50] } as const;
const side = { unit: 'mm', range: [20, 1000] } as const;

/** Gap at the last corner of a mitered box when all eight cuts are off the same way and three corners are held closed. */
export const mitreGapAdded = relation({
  id: 'mitre-gap-added',
  title: 'Gap at the last corner, all cuts off the same way',
  result: { symbol: 'g', name: 'gap at the last corner', unit: 'mm' },
  inputs: { t: thickness, e: error },
  expression: 't * sqrt(2) * sin(8 e)',
  compute: ({ t, e }) => t * Math.SQRT2 * Math.sin(8 * e * radians),
  evidence: 'geometry',
  source:
    'The eight angles of four corners must add up to 360°; what one corner lacks is the sum of eight errors.',
});

/** The same gap where the eight errors are independent: their sum grows with the square root of eight. */
export const mitreGapRandom = relation({
  id: 'mitre-gap-random',
  title: 'Gap at the last corner, each cut off its own way',
  result: { symbol: 'g', name: 'usual gap at the last corner', unit: 'mm' },
  inputs: { t: thickness, e: { ...error, name: 'usual error of a cut' } },
  expression: 't * sqrt(2) * sin(sqrt(8) * e)',
  compute: ({ t, e }) => t * Math.SQRT2 * Math.sin(Math.sqrt(8) * e * radians),
  evidence: 'geometry',
  source: 'Independent errors add up as the square root of their number.',
});

/** How far the fourth miter opens when one of two opposite parts is too long and three corners are held closed. */
export const mitreGapOfLength = relation({
  id: 'mitre-gap-of-length',
  title: 'Miter that a part too long holds open',
  result: { symbol: 'g', name: 'gap at the last corner', unit: 'mm' },
  inputs: { d: { name: 'difference of two opposite parts', unit: 'mm', range: [0, 5] } },
  expression: 'd / sqrt(2)',
  compute: ({ d }) => d / Math.SQRT2,
  evidence: 'geometry',
  source: 'The difference lies along the part; half of its square opens the 45° face, half slides along it.',
});

/** Step across an end that is out of square. */
export const endStep = relation({
  id: 'end-step',
  title: 'Step of an end that is out of square',
  result: { symbol: 's', name: 'step across the end', unit: 'mm' },
  inputs: { w: { ...side, name: 'width of the cut' }, e: error },
  expression: 'w * tan(e)',
  compute: ({ w, e }) => w * Math.tan(e * radians),
  evidence: 'geometry',
  source: 'A slope of so many degrees over the width of the part.',
});

/** Difference of the diagonals of a rectangle racked by an angle; opposite sides stay equal. */
export const diagonalDifference = relation({
  id: 'diagonal-difference',
  title: 'Difference of the diagonals of a racked box',
  result: { symbol: 'D', tex: '\\Delta', name: 'difference of the diagonals', unit: 'mm' },
  inputs: {
    a: { ...side, name: 'length' },
    b: { ...side, name: 'width' },
    e: { ...error, name: 'angle off square' },
  },
  expression: 'sqrt(a^2 + b^2 + 2 a * b * sin(e)) - sqrt(a^2 + b^2 - 2 a * b * sin(e))',
  compute: ({ a, b, e }) => {
    const twist = 2 * a * b * Math.sin(e * radians);
    return Math.sqrt(a * a + b * b + twist) - Math.sqrt(a * a + b * b - twist);
  },
  evidence: 'geometry',
  source: 'The law of cosines on the two triangles of the rectangle.',
  limits: 'Equal diagonals prove a rectangle only where opposite sides are equal.',
});

/** The angle a box is off square, from the difference of its diagonals; degrees. */
export function angleFromDiagonals(a: number, b: number, difference: number): number {
  // d₁² - d₂² = 4 a b sin e and d₁² + d₂² = 2 (a² + b²); solved for the difference d₁ - d₂.
  const sum = Math.sqrt(4 * (a * a + b * b) - difference * difference);
  return Math.asin(Math.min(1, (difference * sum) / (4 * a * b))) / radians;
}
