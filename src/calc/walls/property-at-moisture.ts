/**
 * Strength and stiffness grow as wood dries.
 *
 *   P = P_12 (P_12 / P_g)^((12 − M) / (M_p − 12))
 *
 * Symbols: P the property at M % MC, P_12 at 12 %, P_g green (all MPa); M_p the moisture at which drying begins to show, %:
 * 21 to 28, and 25 where the handbook names none.
 * Not for work to maximum load, impact bending, or tension across the grain.
 * Wood Handbook, FPL-GTR-282 (2021), eq. 5-3, p. 5-34, seen second-hand.
 */
import { relation } from '../core/relation.ts';

const property = { unit: 'MPa', range: [0.1, 50000] } as const;

/** Bending strength, stiffness and the like at another moisture than that of the tables, MPa. */
export const propertyAtMoisture = relation({
  id: 'property-at-moisture',
  title: 'Strength or stiffness at another moisture',
  result: { symbol: 'P', name: 'property at that moisture', unit: 'MPa' },
  inputs: {
    P_12: { ...property, name: 'property at 12 % MC' },
    P_g: { ...property, name: 'property of green wood' },
    M: { name: 'moisture content', unit: '%', range: [4, 28] },
    M_p: { name: 'moisture at which drying begins to show', unit: '%', range: [21, 28] },
  },
  rangesGiven: ({ M_p }) => ({ M: [4, M_p] }),
  expression: 'P_12 * (P_12 / P_g)^((12 - M) / (M_p - 12))',
  compute: ({ P_12, P_g, M, M_p }) => P_12 * (P_12 / P_g) ** ((12 - M) / (M_p - 12)),
  evidence: 'published',
  source: 'Wood Handbook (2021), eq. 5-3, p. 5-34, seen second-hand.',
  limits:
    'An average of clear wood. Not for tension across the grain or shock. Of green wood the tables here have no figures, so it is not put to work on your box.',
});
