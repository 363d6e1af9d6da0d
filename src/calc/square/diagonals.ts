/**
 * The diagonals of a box, and what their difference means.
 *
 *   D = √(a² + b² + 2 a b sin e) − √(a² + b² − 2 a b sin e)      difference, racked by e
 *   e = asin(D √(4 (a² + b²) − D²) / (4 a b))                     and back
 *   x = b sin e = D √(4 (a² + b²) − D²) / (4 a)                   shift of the far end
 *
 *   from  d₁² − d₂² = 4 a b sin e  and  d₁² + d₂² = 2 (a² + b²)
 *
 * Symbols: a and b the sides, D difference of the diagonals, x shift along a of the end that is b away (mm); e angle off
 * square (degrees).
 * Held fixed: opposite sides are equal. Equal diagonals prove a rectangle only then.
 */
import { relation } from '../core/relation.ts';

const radians = Math.PI / 180;
const side = { unit: 'mm', range: [20, 1000] } as const;
const sides = { a: { ...side, name: 'length' }, b: { ...side, name: 'width' } } as const;
const D = { name: 'difference of the diagonals', unit: 'mm', range: [0, 10] } as const;
const onlyIfEqual = 'Equal diagonals prove a rectangle only where opposite sides are equal.';

/** Difference of the diagonals of a rectangle racked by an angle, mm. */
export const diagonalDifference = relation({
  id: 'diagonal-difference',
  title: 'Difference of the diagonals of a racked box',
  result: { symbol: 'D', tex: '\\Delta', name: 'difference of the diagonals', unit: 'mm' },
  inputs: { ...sides, e: { name: 'angle off square', unit: 'deg', range: [0, 2] } },
  expression: 'sqrt(a^2 + b^2 + 2 a * b * sin(e)) - sqrt(a^2 + b^2 - 2 a * b * sin(e))',
  compute: ({ a, b, e }) => {
    const racked = 2 * a * b * Math.sin(e * radians);
    return Math.sqrt(a * a + b * b + racked) - Math.sqrt(a * a + b * b - racked);
  },
  evidence: 'geometry',
  source: 'The law of cosines on the two triangles of the rectangle.',
  limits: onlyIfEqual,
});

/** The angle a box is off square, degrees, from the difference of its diagonals. */
export const leanFromDiagonals = relation({
  id: 'lean-from-diagonals',
  title: 'Angle off square, from the diagonals',
  result: { symbol: 'e', name: 'angle off square', unit: 'deg' },
  inputs: { ...sides, D },
  rangesGiven: ({ a, b }) => ({ D: [0, 0.5 * Math.min(a, b)] }),
  expression: 'asin(D * sqrt(4 * (a^2 + b^2) - D^2) / (4 * a * b))',
  compute: ({ a, b, D }) => Math.asin((D * Math.sqrt(4 * (a * a + b * b) - D * D)) / (4 * a * b)) / radians,
  evidence: 'geometry',
  source: 'The law of cosines on both triangles, solved for the angle.',
  limits: onlyIfEqual,
});

/** How far one end of the box stands aside of where it should, mm. */
export const endShift = relation({
  id: 'end-shift',
  title: 'Shift of the far end of a racked box',
  result: { symbol: 'x', name: 'shift of the far end', unit: 'mm' },
  inputs: { ...sides, D },
  rangesGiven: ({ a, b }) => ({ D: [0, 0.5 * Math.min(a, b)] }),
  expression: 'D * sqrt(4 * (a^2 + b^2) - D^2) / (4 * a)',
  compute: ({ a, b, D }) => (D * Math.sqrt(4 * (a * a + b * b) - D * D)) / (4 * a),
  evidence: 'geometry',
  source: 'The width times the sine of the angle off square.',
  limits: onlyIfEqual,
});
