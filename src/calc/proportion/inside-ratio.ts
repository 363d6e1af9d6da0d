/**
 * Why inside and outside cannot share a ratio.
 *
 *   r_in  = (L - 2t) / (W - 2t)        inside ratio from the outside
 *   r_out = (l + 2t) / (w + 2t)        outside ratio from the inside
 *   L = r_in (W - 2t) + 2t             the outside length that gives a wanted inside ratio
 *   t = (r_in W - L) / (2 (r_in - 1))  the wall that gives it
 *
 * Symbols: L, W outside length and width, l, w inside length and width, t wall thickness (mm); r_in, r_out ratios
 * of length to width (pure numbers). Walls have one thickness on all four sides.
 * Held fixed: the outside, when the wall moves and the inside follows; the inside, when the outside follows.
 * Since r_in - r_out = 2t (r_out - 1) / (W - 2t), the ratios differ unless the box is square or has no walls.
 */
import { relation } from '../core/relation.ts';

const side = { unit: 'mm', range: [1, 2000] } as const;
const wall = { name: 'wall thickness', unit: 'mm', range: [0, 100] } as const;
const ratioRange = { unit: '1', range: [0.1, 10] } as const;

/** The thickest wall that leaves 1 mm of inside across the shorter side, in mm. */
const thickestWall = (L: number, W: number) => (Math.min(L, W) - 1) / 2;

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
    t: wall,
  },
  rangesGiven: ({ L, W }) => ({ t: [0, thickestWall(L, W)] }),
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
    t: wall,
  },
  rangesGiven: ({ W }) => ({ t: [0, thickestWall(W, W)] }),
  expression: '(W - 2 t) r_in + 2 t',
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
    L: { ...side, name: 'outside length' },
  },
  // A shorter outside would need walls that meet, a longer one walls below nothing.
  rangesGiven: ({ r_in, W }) => ({ L: [W, r_in * W] }),
  expression: '(r_in W - L) / (2 (r_in - 1))',
  compute: ({ r_in, W, L }) => (r_in * W - L) / (2 * (r_in - 1)),
  evidence: 'geometry',
  source: 'The inside ratio, solved for the wall.',
  limits: 'The number may be no sensible wall: look at it beside the rule for wall thickness.',
});
