/**
 * Where a box opens: how far the front is lowered for a sliding lid, how much of a height is the lid, how deep a thumb
 * notch can be. mm; all of it adding up, and exact.
 */
import { relation } from '../core/relation.ts';

/** How far the front wall of a sliding-lid box must end below the sides, mm: at the lower edge of their grooves. */
export const frontLowered = relation({
  id: 'front-lowered',
  title: 'How far the front is lowered',
  result: { symbol: 'l_f', name: 'front below the sides', unit: 'mm' },
  inputs: {
    m_d: { name: 'wood above the lid groove', unit: 'mm', range: [0, 100], tex: 'm_d' },
    d: { name: 'width of the lid groove', unit: 'mm', range: [1, 100] },
  },
  expression: 'm_d + d',
  compute: ({ m_d, d }) => m_d + d,
  evidence: 'geometry',
  source: 'The lid comes out over the front, at the height of its grooves.',
});

/** Share of the closed box’s height that the lid takes, a pure number: where the lid line lies. */
export const lidShare = relation({
  id: 'lid-share',
  title: 'Share of the height that is the lid',
  result: { symbol: 'r', name: 'lid’s share of the height', unit: '1' },
  inputs: {
    h: { name: 'height of the lid', unit: 'mm', range: [1, 200] },
    H: { name: 'outside height, closed', unit: 'mm', range: [5, 1000] },
  },
  rangesGiven: ({ h }) => ({ H: [h, 1000] }),
  expression: 'h / H',
  compute: ({ h, H }) => h / H,
  evidence: 'geometry',
  source: 'One height over the other.',
});

/** Depth of a thumb notch, mm: the usual one, or what the lid’s thickness leaves above the wood that must stay; below zero there is not even that much wood. */
export const notchDepth = relation({
  id: 'notch-depth',
  title: 'Depth of the thumb notch',
  result: { symbol: 'n', name: 'depth of the notch', unit: 'mm' },
  inputs: {
    n_m: { name: 'most depth that a thumb needs', unit: 'mm', range: [1, 10] },
    T: { name: 'thickness of the lid', unit: 'mm', range: [1, 30] },
    f: { name: 'wood left under it', unit: 'mm', range: [0, 10] },
  },
  expression: 'min(n_m, T - f)',
  compute: ({ n_m, T, f }) => Math.min(n_m, T - f),
  evidence: 'common practice',
  source: 'At least 3 mm (1/8 in) of wood is left under a notch 3 to 5 mm deep: common practice.',
});
