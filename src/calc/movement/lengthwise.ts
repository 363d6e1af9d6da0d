/**
 * Movement where there is hardly any: along the grain, and in plywood.
 *
 *   ΔL = L · (S_L/100) · (M_f − M_i)/30       along the grain, S_L 0.1 to 0.2 %
 *   ΔD = D · C · (M_f − M_i)                  plywood, C per 1 % MC: 0.00014 along the face grain, 0.00021 across it
 *
 * Symbols: L, D size today (mm), S_L shrinkage along the grain green to oven-dry (%), M moisture content (%).
 */

import type { Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';
import { changeByCoefficient, fiberSaturation, type Movement } from './movement.ts';

/** Shrinkage along the grain, green to oven-dry, %: most woods lie between these (Wood Handbook 2010, p. 4-5, read as a quotation). */
export const lengthwiseShrinkage = { low: 0.1, high: 0.2 } as const;

/** Change of length along the grain, mm, for one figure of the lengthwise shrinkage; 0 to 30 % MC. */
export const changeAlongGrain = relation({
  id: 'change-along-grain',
  title: 'Change of length along the grain',
  result: { symbol: 'dL', tex: '\\Delta L', name: 'change of length', unit: 'mm' },
  inputs: {
    L: { name: 'length', unit: 'mm', range: [1, 3000] },
    S_L: { name: 'shrinkage along the grain', unit: '%', range: [0.1, 0.2] },
    M_i: { name: 'moisture content now', unit: '%', range: [0, 30] },
    M_f: { name: 'moisture content then', unit: '%', range: [0, 30] },
  },
  expression: 'L * (S_L / 100) * (M_f - M_i) / 30',
  compute: ({ L, S_L, M_i, M_f }) => (L * (S_L / 100) * (M_f - M_i)) / 30,
  evidence: 'published',
  source: 'wood-handbook-2010',
  limits: 'Wood near the pith and reaction wood can move up to 2 % along the grain: ten times as much.',
});

/** Least and most a length of `length` mm changes along the grain from `from` to `to` % MC (mm, growth positive). */
export function lengthwiseMovement(
  length: number,
  from: number,
  to: number,
): { readonly low: number; readonly high: number } | Refused {
  if (!(length > 0 && length < Infinity)) return { refused: 'The length must be more than 0.' };
  if (![from, to].every((value) => value >= 0 && value <= fiberSaturation))
    return {
      refused: 'Moisture contents must lie between 0 and 30 %: above that, wood no longer changes size.',
    };
  const at = (S_L: number) => changeAlongGrain.compute({ L: length, S_L, M_i: from, M_f: to });
  return { low: at(lengthwiseShrinkage.low), high: at(lengthwiseShrinkage.high) };
}

/**
 * Plywood, fraction per 1 % MC: mean of 22 woods, 5 mm three-ply, from 30 to 90 % relative humidity
 * (Forest Products Research Laboratory, quoted in Joyce, The Technique of Furniture Making).
 */
export const plywoodCoefficient = { along: 0.00014, across: 0.00021 } as const;
/** Moisture content of that plywood at the two ends of the test, %. */
export const plywoodRange = [7, 20] as const;

/**
 * Change, mm, of a plywood panel of `dimension` mm along or across its face grain, from `from` to `to` % MC.
 * Refuses outside the test's 7 to 20 % MC. The thickness moves as solid wood does.
 */
export function plywoodMovement(
  dimension: number,
  direction: keyof typeof plywoodCoefficient,
  from: number,
  to: number,
): Movement | Refused {
  if (!(dimension > 0 && dimension < Infinity)) return { refused: 'The size must be more than 0.' };
  const [low, high] = plywoodRange;
  if (![from, to].every((value) => value >= low && value <= high))
    return {
      refused: 'Plywood was measured from 7 to 20 % moisture content only. Outside it there is no figure.',
    };
  return {
    change: changeByCoefficient.compute({
      D: dimension,
      C: plywoodCoefficient[direction],
      M_i: from,
      M_f: to,
    }),
    method: 'coefficient',
    because:
      'Crossed layers hold each other: plywood moves about a fifteenth as much as solid wood does across the grain.',
  };
}
