/**
 * What small errors of angle and length do to the last corner of a mitered box.
 *
 *   g = t √2 sin(8 e)                eight miters that are all off the same way
 *   g = t √2 sin(√8 e)               the same, when each of the eight errors is its own
 *   g = d / √2                       one of two opposite parts is d too long
 *
 * Symbols: t thickness at the miter, d too much length (mm); e angle error (degrees).
 * Held fixed: the parts are straight and keep their lengths; three corners are held closed.
 */
import { relation } from '../core/relation.ts';

const radians = Math.PI / 180;
const error = { name: 'error of each cut', unit: 'deg', range: [0, 2] } as const;
const thickness = { name: 'thickness at the miter', unit: 'mm', range: [1, 50] } as const;

/** Gap at the last corner of a mitered box when all eight cuts are off the same way and three corners are held closed. */
export const miterGapAdded = relation({
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
export const miterGapRandom = relation({
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
export const miterGapOfLength = relation({
  id: 'mitre-gap-of-length',
  title: 'Miter that a part too long holds open',
  result: { symbol: 'g', name: 'gap at the last corner', unit: 'mm' },
  inputs: { d: { name: 'difference of two opposite parts', unit: 'mm', range: [0, 5] } },
  expression: 'd / sqrt(2)',
  compute: ({ d }) => d / Math.SQRT2,
  evidence: 'geometry',
  source: 'The difference lies along the part; half of its square opens the 45° face, half slides along it.',
});
