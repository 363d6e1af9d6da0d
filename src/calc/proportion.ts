/**
 * Proportion: one side from another, and why inside and outside cannot share a ratio.
 *
 *   r = L / W            ratio of length to width
 *   r_in = (L - 2t) / (W - 2t)
 *
 * Symbols: L length, W width, t wall thickness (mm), r ratio.
 * Held fixed: the outside sizes, when the wall moves.
 */
import { relation } from './relation.ts';

const side = { unit: 'mm', range: [20, 1000] } as const;
const wall = { name: 'wall thickness', unit: 'mm', range: [1, 9.9] } as const;

/** Ratio of the longer side to the shorter one. */
export const ratio = relation({
  id: 'ratio',
  title: 'Ratio of length to width',
  result: { symbol: 'r', name: 'length to width', unit: '1' },
  inputs: { L: { ...side, name: 'length' }, W: { ...side, name: 'width' } },
  expression: 'L / W',
  compute: ({ L, W }) => L / W,
  evidence: 'geometry',
  source: 'A ratio says how many widths go into the length.',
});

/** Ratio of the inside of a box, from its outside. Never equal to the outside ratio unless the box is square. */
export const insideRatio = relation({
  id: 'inside-ratio',
  title: 'Inside ratio from the outside',
  result: { symbol: 'r_in', name: 'inside length to width', unit: '1' },
  inputs: {
    L: { ...side, name: 'outside length' },
    W: { ...side, name: 'outside width' },
    t: wall,
  },
  expression: '(L - 2 t) / (W - 2 t)',
  compute: ({ L, W, t }) => (L - 2 * t) / (W - 2 * t),
  evidence: 'geometry',
  source: 'Both sides lose two walls, so the shorter side loses the larger share.',
});
