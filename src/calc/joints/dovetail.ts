/**
 * Sizes of a through dovetail.
 *
 *   n tails and n pins share the height, two half pins among them:  H = n (tail + pin)
 *   at its root a tail is narrower by t/s on either side:  H/n − p − 2 t/s
 *   that slope as an angle:  arctan(1/s)
 *   its cheek is longer than a straight one by  √(1 + 1/s²) − 1
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

/** What a tail gains in width on either side from its root to its end, mm. */
export const tailSpread = relation({
  id: 'tail-spread',
  title: 'Spread of a tail on either side',
  result: { symbol: 'e', name: 'spread on either side', unit: 'mm' },
  inputs: {
    t: { name: 'wall thickness', unit: 'mm', range: [2, 50] },
    s: { name: 'slope, length to one of width', unit: '1', range: [3, 12] },
  },
  expression: 't / s',
  compute: ({ t, s }) => t / s,
  evidence: 'geometry',
  source: 'One of width for s of length, over the thickness of the wall.',
});

/** The slope of a tail as an angle from a straight cheek, degrees. */
export const slopeAngle = relation({
  id: 'slope-angle',
  title: 'Angle of a dovetail',
  result: { symbol: 'a', tex: '\\alpha', name: 'angle from straight', unit: 'deg' },
  inputs: { s: { name: 'slope, length to one of width', unit: '1', range: [3, 12] } },
  expression: 'atan(1 / s)',
  compute: ({ s }) => (Math.atan(1 / s) * 180) / Math.PI,
  evidence: 'geometry',
  source: 'A right triangle, s long and one wide.',
});

/** How much longer a slanted cheek is than a straight one, percent. */
export const slopeGain = relation({
  id: 'slope-gain',
  title: 'Glue area gained by the slope of a dovetail',
  result: { symbol: 'G', name: 'gain of area', unit: '%' },
  inputs: { s: { name: 'slope, length to one of width', unit: '1', range: [3, 12] } },
  expression: '100 (sqrt(1 + 1 / s^2) - 1)',
  compute: ({ s }) => 100 * (Math.sqrt(1 + 1 / s ** 2) - 1),
  evidence: 'geometry',
  source: 'The long side of a right triangle, s long and one wide, against s.',
});

/** Width of a tail in pins, both on the face where the pin is narrowest. */
export const tailPerPin = relation({
  id: 'tail-per-pin',
  title: 'Tail to pin',
  result: { symbol: 'q', name: 'tail to pin', unit: '1' },
  inputs: {
    H: { name: 'height of the wall', unit: 'mm', range: [5, 600] },
    n: { name: 'tails', unit: '1', range: [1, 50], whole: true },
    p: { name: 'width of a pin at its narrow side', unit: 'mm', range: [0.5, 50] },
  },
  expression: '(H / n - p) / p',
  compute: ({ H, n, p }) => (H / n - p) / p,
  evidence: 'geometry',
  source: 'The pitch less a pin is a tail.',
});
