/**
 * The floor of a slot cut by teeth that are beveled in turn to either side: two slopes that meet in a ridge.
 *
 *   r = (k / 2) tan β
 *
 * Symbols: k width of the cut (mm), β bevel of the tops of the teeth (degrees), r height of the ridge (mm).
 * Held fixed: each tooth is as wide as the cut, and its point stands at one side of it.
 */
import { relation } from '../core/relation.ts';

/** Height of the ridge that beveled teeth leave in the middle of a slot's floor, mm. Flat tops leave none. */
export const toothRidge = relation({
  id: 'tooth-ridge',
  title: 'Ridge in the floor of a slot',
  result: { symbol: 'r', name: 'height of the ridge', unit: 'mm' },
  inputs: {
    k: { name: 'width of the cut', unit: 'mm', range: [0.5, 12] },
    beta: { name: 'bevel of the tops of the teeth', unit: 'deg', range: [0, 40], tex: '\\beta' },
  },
  expression: 'k / 2 * tan(beta)',
  compute: ({ k, beta }) => (k / 2) * Math.tan((beta * Math.PI) / 180),
  evidence: 'geometry',
  source: 'Two slopes that rise from the sides of the cut meet in its middle.',
});
