/**
 * What linings and dividers leave of the inside; `sizes.ts` has the inside they ask for.
 *
 *   c = (l - 2 f - n (d + s)) / (n + 1)    one of n + 1 equal compartments
 *
 * Symbols, all along the same direction and in mm: l inside of the bare box, c one compartment, f thickness of the
 * lining on each of the two faces, d thickness of a divider, s slip it needs in its slot; n number of dividers.
 * Held fixed: the inside, when the number of dividers changes and the compartments follow.
 */
import { relation } from '../core/relation.ts';
import { roomForFittings } from './sizes.ts';

const { f, n, d, s } = roomForFittings.inputs;

/** One of the equal compartments that a given inside leaves, in mm. */
export const compartment = relation({
  id: 'compartment',
  title: 'Compartment left by lining and dividers',
  result: { symbol: 'c', name: 'one compartment', unit: 'mm' },
  inputs: {
    l: { name: 'inside size', unit: 'mm', range: [1, 2000] },
    f,
    n,
    d,
    s,
  },
  // Less than this is used up before the compartments are a millimeter wide.
  rangesGiven: ({ f, n, d, s }) => ({ l: [n + 1 + 2 * f + n * (d + s), 2000] }),
  expression: '(l - 2 f - n * (d + s)) / (n + 1)',
  compute: ({ l, f, n, d, s }) => (l - 2 * f - n * (d + s)) / (n + 1),
  evidence: 'geometry',
  source: 'What the lining and the dividers leave, shared out.',
});
