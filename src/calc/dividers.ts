/**
 * What linings and dividers take from the inside.
 *
 *   l = (n + 1) c + 2 f + n (d + s)        inside for n + 1 equal compartments
 *   c = (l - 2 f - n (d + s)) / (n + 1)    compartment left by a given inside
 *
 * Symbols, all along the same direction and in mm: l inside of the bare box, c one compartment, f thickness of the
 * lining on each of the two faces, d thickness of a divider, s slip it needs in its slot; n number of dividers.
 * Held fixed: the inside, when the number of dividers changes and the compartments follow.
 */
import { relation } from './relation.ts';

const fittings = {
  f: { name: 'lining on each face', unit: 'mm', range: [0, 10] },
  n: { name: 'number of dividers', unit: '1', range: [0, 20], whole: true },
  d: { name: 'divider thickness', unit: 'mm', range: [0, 20] },
  s: { name: 'slip of each divider', unit: 'mm', range: [0, 1] },
} as const;

/** Inside length or width of the bare box for equal compartments, in mm. */
export const insideForCompartments = relation({
  id: 'inside-for-compartments',
  title: 'Inside for lining and dividers',
  result: { symbol: 'l', name: 'inside size', unit: 'mm' },
  inputs: { c: { name: 'one compartment', unit: 'mm', range: [1, 500] }, ...fittings },
  expression: '(n + 1) * c + 2 f + n * (d + s)',
  compute: ({ c, f, n, d, s }) => (n + 1) * c + 2 * f + n * (d + s),
  evidence: 'geometry',
  source: 'Everything that stands between the two walls, added up.',
});

/** One of the equal compartments that a given inside leaves, in mm. */
export const compartment = relation({
  id: 'compartment',
  title: 'Compartment left by lining and dividers',
  result: { symbol: 'c', name: 'one compartment', unit: 'mm' },
  inputs: {
    l: {
      name: 'inside size',
      unit: 'mm',
      range: [1, 2000],
      // Less than this is used up before the first compartment is a millimeter wide.
      rangeGiven: ({ f, n, d, s }) => [n + 1 + 2 * f + n * (d + s), 2000],
    },
    ...fittings,
  },
  expression: '(l - 2 f - n * (d + s)) / (n + 1)',
  compute: ({ l, f, n, d, s }) => (l - 2 * f - n * (d + s)) / (n + 1),
  evidence: 'geometry',
  source: 'What the lining and the dividers leave, shared out.',
});
