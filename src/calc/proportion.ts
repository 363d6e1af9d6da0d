/**
 * Proportion: one side from another, and why inside and outside cannot share a ratio.
 *
 *   r = L / W                          ratio of length to width; L = r W and W = L / r turn it round
 *   r_in  = (L - 2t) / (W - 2t)        inside ratio from the outside
 *   r_out = (l + 2t) / (w + 2t)        outside ratio from the inside
 *   L = r_in (W - 2t) + 2t             the outside length that gives a wanted inside ratio
 *   t = (r_in W - L) / (2 (r_in - 1))  the wall that gives it
 *   s = H / W                          height as a share of the width; H = s W
 *   e = 100 (r / p - 1)                how far ratio r is from ratio p
 *
 * Symbols: L, W, H outside length, width, height, l, w inside length and width, t wall thickness (mm);
 * r, p ratios and s share (pure numbers); e difference (%).
 * Held fixed: the outside sizes, when the wall moves and the inside follows; the inside sizes, when the outside
 * follows. Walls have one thickness on all four sides. Out of r_in - r = 2t (r - 1) / (W - 2t) comes that the two
 * ratios differ unless the box is square or has no walls.
 *
 * Longer than most files here: ten small relations of one subject.
 */
import { relation } from './relation.ts';

const side = { unit: 'mm', range: [1, 2000] } as const;
const wall = { name: 'wall thickness', unit: 'mm', range: [0, 100] } as const;
const ratioRange = { unit: '1', range: [0.1, 10] } as const;

/** The thickest wall that leaves 1 mm of inside across the shorter side, in mm. */
const thickestWall = (L: number, W: number) => (Math.min(L, W) - 1) / 2;

/** Ratio of length to width. */
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

/** Length that a ratio gives to a width, in mm. */
export const lengthFromRatio = relation({
  id: 'length-from-ratio',
  title: 'Length from width and ratio',
  result: { symbol: 'L', name: 'length', unit: 'mm' },
  inputs: { r: { ...ratioRange, name: 'wanted ratio' }, W: { ...side, name: 'width' } },
  expression: 'r * W',
  compute: ({ r, W }) => r * W,
  evidence: 'geometry',
  source: 'The ratio, turned round.',
});

/** Width that a ratio gives to a length, in mm. */
export const widthFromRatio = relation({
  id: 'width-from-ratio',
  title: 'Width from length and ratio',
  result: { symbol: 'W', name: 'width', unit: 'mm' },
  inputs: { L: { ...side, name: 'length' }, r: { ...ratioRange, name: 'wanted ratio' } },
  expression: 'L / r',
  compute: ({ L, r }) => L / r,
  evidence: 'geometry',
  source: 'The ratio, turned round.',
});

/**
 * Ratio of the inside of a box, from its outside. Never equal to the outside ratio unless the box is square.
 * NaN where the walls meet.
 */
export const insideRatio = relation({
  id: 'inside-ratio',
  title: 'Inside ratio from the outside',
  result: { symbol: 'r_in', name: 'inside length to width', unit: '1' },
  inputs: {
    L: { ...side, name: 'outside length' },
    W: { ...side, name: 'outside width' },
    t: { ...wall, rangeGiven: ({ L, W }) => [0, thickestWall(L, W)] },
  },
  expression: '(L - 2 t) / (W - 2 t)',
  compute: ({ L, W, t }) => (2 * t < Math.min(L, W) ? (L - 2 * t) / (W - 2 * t) : Number.NaN),
  evidence: 'geometry',
  source: 'Both sides lose two walls, so the shorter side loses the larger share.',
});

/** Ratio of the outside of a box, from its inside. */
export const outsideRatio = relation({
  id: 'outside-ratio',
  title: 'Outside ratio from the inside',
  result: { symbol: 'r_out', name: 'outside length to width', unit: '1' },
  inputs: { l: { ...side, name: 'inside length' }, w: { ...side, name: 'inside width' }, t: wall },
  expression: '(l + 2 t) / (w + 2 t)',
  compute: ({ l, w, t }) => (l + 2 * t) / (w + 2 * t),
  evidence: 'geometry',
  source: 'Both sides gain two walls, so the shorter side gains the larger share.',
});

/** Outside length that gives the inside a wanted ratio, at a given outside width and wall, in mm. */
export const lengthForInsideRatio = relation({
  id: 'length-for-inside-ratio',
  title: 'Outside length for a wanted inside ratio',
  result: { symbol: 'L', name: 'outside length', unit: 'mm' },
  inputs: {
    r_in: { ...ratioRange, name: 'wanted inside ratio' },
    W: { ...side, name: 'outside width' },
    t: { ...wall, rangeGiven: ({ W }) => [0, thickestWall(W, W)] },
  },
  expression: 'r_in * (W - 2 t) + 2 t',
  compute: ({ r_in, W, t }) => (2 * t < W ? r_in * (W - 2 * t) + 2 * t : Number.NaN),
  evidence: 'geometry',
  source: 'The inside gets its ratio first; then each end gets its wall.',
});

/** Wall that gives the inside a wanted ratio, the outside fixed, in mm. Thicker walls only make the inside longer for its width. */
export const wallForInsideRatio = relation({
  id: 'wall-for-inside-ratio',
  title: 'Wall for a wanted inside ratio',
  result: { symbol: 't', name: 'wall thickness', unit: 'mm' },
  inputs: {
    r_in: { name: 'wanted inside ratio', unit: '1', range: [1.01, 10] },
    W: { ...side, name: 'outside width' },
    // A shorter outside would need walls that meet, a longer one walls below nothing.
    L: { ...side, name: 'outside length', rangeGiven: ({ r_in, W }) => [W, r_in * W] },
  },
  expression: '(r_in * W - L) / (2 (r_in - 1))',
  compute: ({ r_in, W, L }) => (r_in * W - L) / (2 * (r_in - 1)),
  evidence: 'geometry',
  source: 'The inside ratio, solved for the wall.',
  limits: 'The number may be no sensible wall: look at it beside the rule for wall thickness.',
});

/** Height as a share of the width. */
export const heightShare = relation({
  id: 'height-share',
  title: 'Height as a share of the width',
  result: { symbol: 's', name: 'height to width', unit: '1' },
  inputs: { H: { ...side, name: 'height' }, W: { ...side, name: 'width' } },
  expression: 'H / W',
  compute: ({ H, W }) => H / W,
  evidence: 'geometry',
  source: 'How much of the width stands up as height.',
});

/** Height from the width and the share wanted, in mm. */
export const heightFromWidth = relation({
  id: 'height-from-width',
  title: 'Height from the width',
  result: { symbol: 'H', name: 'height', unit: 'mm' },
  inputs: { s: { name: 'share of the width', unit: '1', range: [0.05, 5] }, W: { ...side, name: 'width' } },
  expression: 's * W',
  compute: ({ s, W }) => s * W,
  evidence: 'geometry',
  source: 'The share, turned round.',
});

/** By how many percent one ratio is longer (positive) or shorter (negative) than another. */
export const ratioDifference = relation({
  id: 'ratio-difference',
  title: 'One ratio against another',
  result: { symbol: 'e', name: 'difference of the ratio', unit: '%' },
  inputs: { r: { ...ratioRange, name: 'ratio' }, p: { ...ratioRange, name: 'ratio it is held against' } },
  expression: '100 (r / p - 1)',
  compute: ({ r, p }) => 100 * (r / p - 1),
  evidence: 'geometry',
  source: 'The difference as a share of the ratio it is held against.',
});
