/** What is said to an answer: right, which step went wrong, or which way it is off. */

import { INCH } from '../../units/index.ts';
import type { Mistake, NumberAsked } from './exercise.ts';

export type Judgment =
  | { readonly is: 'right' }
  /** More than one where several slips give the same number. */
  | { readonly is: 'mistake'; readonly mistakes: readonly Mistake[] }
  | { readonly is: 'off'; readonly too: 'large' | 'small' };

/** Slips of units and of the decimal point, which every length can have. */
const ofUnits = ({ key, print }: NumberAsked): Mistake[] =>
  print.kind === 'length'
    ? [
        {
          id: 'inches-as-mm',
          value: key / INCH,
          says: 'The sum is right, but the unit is not: you wrote inches where millimeters are meant.',
        },
        {
          id: 'mm-as-inches',
          value: key * INCH,
          says: 'The sum is right, but the unit is not: you wrote millimeters where inches are meant.',
        },
        { id: 'ten-times', value: key * 10, says: 'The decimal point is off: this is ten times too much.' },
        { id: 'a-tenth', value: key / 10, says: 'The decimal point is off: this is a tenth of it.' },
      ]
    : [];

/** Room for arithmetic noise at the very edge of what is right. */
const noise = 1e-9;
const near = (value: number, wanted: number, within: number) =>
  Math.abs(value - wanted) <= within + noise * Math.max(1, Math.abs(wanted));

/** Judges a number, in the unit of the key. What is right is never taken for a slip. */
export function judge(asked: NumberAsked, value: number): Judgment {
  const { key, within, mistakes } = asked;
  if (near(value, key, within)) return { is: 'right' };
  // The exercise's own slips say more than those of units.
  for (const [these, reach] of [
    [mistakes, within],
    [ofUnits(asked), Math.min(within, key / 100)],
  ] as const) {
    const met = these.filter((one) => near(value, one.value, reach));
    const nearest = Math.min(...met.map((one) => Math.abs(one.value - value)));
    const same = met.filter((one) => Math.abs(one.value - value) <= nearest + 0.1 * reach);
    if (same.length > 0) return { is: 'mistake', mistakes: same };
  }
  return { is: 'off', too: value > key ? 'large' : 'small' };
}
