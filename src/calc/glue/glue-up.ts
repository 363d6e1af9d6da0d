/**
 * The clock of a glue-up: how many faces take glue, and how long spreading and closing last together.
 *
 *   N = 4 m                     faces of four corners
 *   T = (N s_f + k s_k) / 60    minutes from the first stroke of the brush to the last clamp
 *
 * Symbols: m faces at one corner, N faces of all four, s_f seconds a face, k other steps of the order, s_k seconds each.
 * Held fixed: one pair of hands, one thing after another. The trial without glue is the second term alone.
 */
import { relation } from '../core/relation.ts';

const count = { unit: '1', whole: true } as const;

/** Faces that take glue at the four corners of a box; one of each pair that meets. */
export const facesToGlue = relation({
  id: 'faces-to-glue',
  title: 'Faces that take glue at four corners',
  result: { symbol: 'N', name: 'faces that take glue', unit: '1' },
  inputs: { m: { ...count, name: 'faces at one corner', range: [1, 200] } },
  expression: '4 m',
  compute: ({ m }) => 4 * m,
  evidence: 'geometry',
  source:
    'A box has four corners. A finger joint has a face beside each finger but the first, a plain miter one.',
  limits: 'Counts one face of each pair. Who spreads glue on both has twice as many.',
});

/** Minutes from the first stroke of the brush to the last clamp. */
export const glueUpTime = relation({
  id: 'glue-up-time',
  title: 'How long the glue-up takes',
  result: { symbol: 'T', name: 'minutes for the glue-up', unit: '1' },
  inputs: {
    N: { ...count, name: 'faces that take glue', range: [0, 800] },
    s_f: { name: 'seconds for each face', unit: '1', range: [0, 120] },
    k: { ...count, name: 'other steps of the order', range: [0, 60] },
    s_k: { name: 'seconds for each step', unit: '1', range: [0, 300] },
  },
  expression: '(N s_f + k s_k) / 60',
  compute: ({ N, s_f, k, s_k }) => (N * s_f + k * s_k) / 60,
  evidence: 'geometry',
  source: 'Times that follow one another add up.',
  limits: 'One pair of hands and no mishap. Take the seconds from your own trial.',
});
