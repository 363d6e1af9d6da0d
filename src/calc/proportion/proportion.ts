/**
 * Proportion: one side from another.
 *
 *   r = L / W              ratio of length to width; L = r W and W = L / r turn it round
 *   s = H / W              height as a share of the width; H = s W
 *   e = 100 (r / p - 1)    how far ratio r is from ratio p
 *
 * Symbols: L, W, H length, width, height (mm), all outside or all inside; r, p ratios and s share (pure numbers);
 * e difference (%). Held fixed: the ratio, when one side moves and the other follows.
 */
import { relation } from '../core/relation.ts';

const side = { unit: 'mm', range: [1, 2000] } as const;
const ratioRange = { unit: '1', range: [0.1, 10] } as const;

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

/** Ratio of the longer of two sides to the shorter, whichever is called the length. */
export const longToShort = relation({
  id: 'long-to-short',
  title: 'Ratio of the longer side to the shorter',
  result: { symbol: 'r', name: 'longer to shorter', unit: '1' },
  inputs: { L: { ...side, name: 'length' }, W: { ...side, name: 'width' } },
  expression: 'max(L / W, W / L)',
  compute: ({ L, W }) => Math.max(L / W, W / L),
  evidence: 'geometry',
  source: 'A box turned by a quarter is the same box.',
});

/** Height as a share of the shorter side. */
export const heightOfShorter = relation({
  id: 'height-of-shorter',
  title: 'Height as a share of the shorter side',
  result: { symbol: 's', name: 'height to shorter side', unit: '1' },
  inputs: { H: { ...side, name: 'height' }, L: { ...side, name: 'length' }, W: { ...side, name: 'width' } },
  expression: 'H / min(L, W)',
  compute: ({ H, L, W }) => H / Math.min(L, W),
  evidence: 'geometry',
  source: 'One length over another.',
});

/** Length that a ratio gives to a width, in mm. */
export const lengthFromRatio = relation({
  id: 'length-from-ratio',
  title: 'Length from width and ratio',
  result: { symbol: 'L', name: 'length', unit: 'mm' },
  inputs: { r: { ...ratioRange, name: 'wanted ratio' }, W: { ...side, name: 'width' } },
  expression: 'r W',
  compute: ({ r, W }) => r * W,
  evidence: 'geometry',
  source: 'The ratio, turned around.',
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
  source: 'The ratio, turned around.',
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
  expression: 's W',
  compute: ({ s, W }) => s * W,
  evidence: 'geometry',
  source: 'The share, turned around.',
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
