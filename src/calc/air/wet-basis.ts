/**
 * Moisture told as a share of the wet wood, and as the rest of this notebook tells it: as a share of the dry wood.
 *
 *   M = 100 M_w / (100 − M_w)
 *
 * Symbols: M moisture on dry wood (%), M_w the same on wet wood (%). Wood of 100 g with 20 g of water: 20 % of the wet,
 * 20/80 = 25 % of the dry. On dry wood it may pass 100 %; on wet wood it never can.
 */
import { relation } from '../core/relation.ts';

/** Moisture as a share of the dry wood, %, from the share of the wet wood. */
export const dryFromWet = relation({
  id: 'dry-from-wet',
  title: 'Moisture on dry wood from moisture on wet wood',
  result: { symbol: 'M', name: 'moisture on dry wood', unit: '%' },
  inputs: {
    M_w: { name: 'moisture on wet wood', unit: '%', range: [0, 70] },
  },
  expression: '100 * M_w / (100 - M_w)',
  compute: ({ M_w }) => (100 * M_w) / (100 - M_w),
  evidence: 'geometry',
  source: 'The same water, once over the wood with it and once over the wood without.',
});
