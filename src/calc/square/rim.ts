/**
 * A twisted rim made flat on a plate: what comes off at its corners.
 *
 *   corners of the rim, three of them level:   0 ── 0        made flat:   −h/2 ── 0
 *                                              │    │                       │     │
 *                                             −h ── 0                      −h ── −h/2
 *
 * A plane has equal sums across its diagonals. Through the two low corners it lies h/2 under the two others, and no
 * plane takes less off the corner that loses most. Pressed to one side, a single corner loses all of h.
 *
 * Symbols: h rock, c loss at a high corner, m wood above the lid's groove (mm).
 * Held fixed: the plate is flat, the walls are straight, the grooves do not follow the rim.
 */
import { relation } from '../core/relation.ts';

const h = { name: 'rock, the gap under the free corner', unit: 'mm', range: [0, 10] } as const;

/** What comes off at each of the two high corners, mm. */
export const rimLoss = relation({
  id: 'rim-loss',
  title: 'What comes off the high corners of a rim',
  result: { symbol: 'c', name: 'loss at two corners', unit: 'mm' },
  inputs: { h },
  expression: 'h / 2',
  compute: ({ h }) => h / 2,
  evidence: 'geometry',
  source: 'The flat rim goes through its two low corners; the rock is shared by the other two.',
  limits: 'The box is held evenly. Pressed down on one side, one corner loses the whole rock.',
});

/** Wood above the lid's groove at a corner that was rubbed down, mm. */
export const lipAfterRim = relation({
  id: 'lip-after-rim',
  title: 'Wood left above the lid’s groove',
  result: { symbol: 'm_c', tex: 'm_c', name: 'wood left at two corners', unit: 'mm' },
  inputs: { m: { name: 'wood above the lid’s groove', unit: 'mm', range: [0, 100] }, h },
  rangesGiven: ({ m }) => ({ h: [0, 2 * m] }),
  expression: 'm - h / 2',
  compute: ({ m, h }) => m - rimLoss.compute({ h }),
  evidence: 'geometry',
  source: 'The groove stays where it was cut, and the rim comes down to it.',
});
