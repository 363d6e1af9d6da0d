/**
 * Sizes of a through dovetail.
 *
 *   n tails and n pins share the height, two half pins among them:  H = n (tail + pin)
 *   at its root a tail is narrower by t/s on either side:  H/n − p − 2 t/s
 *
 * Symbols: H height of the wall, n tails, p width of a pin at its narrow side, t wall thickness, s slope (length to one
 * of width), r width of a tail at its root; mm.
 */
import { relation } from '../core/relation.ts';

/** Width of a tail at its root, where it can break off, mm; below zero the pins meet. */
export const tailRoot = relation({
  id: 'tail-root',
  title: 'Width of a tail at its root',
  result: { symbol: 'r', name: 'width at the root', unit: 'mm' },
  inputs: {
    H: { name: 'height of the wall', unit: 'mm', range: [5, 600] },
    n: { name: 'tails', unit: '1', range: [1, 50], whole: true },
    p: { name: 'width of a pin at its narrow side', unit: 'mm', range: [0, 50] },
    t: { name: 'wall thickness', unit: 'mm', range: [2, 50] },
    s: { name: 'slope, length to one of width', unit: '1', range: [3, 12] },
  },
  expression: 'H / n - p - 2 t / s',
  compute: ({ H, n, p, t, s }) => H / n - p - (2 * t) / s,
  evidence: 'geometry',
  source: 'The pitch less a pin, less what the two slopes take on the way through the wall.',
});
