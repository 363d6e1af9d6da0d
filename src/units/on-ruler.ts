/** A length as it is written on a reader's ruler. `print` is `format` for a length with the rest of the options. */

import type { UnitSystem } from './kinds.ts';
import type { Rounding } from './rounding.ts';
import { isOn, type Ruler, toMark, usualRuler } from './rulers.ts';

interface Wanted {
  readonly system: UnitSystem;
  readonly ruler?: Ruler;
  readonly round?: Rounding;
  readonly spoken?: boolean;
}
type Print = (
  length: number,
  how: Ruler['print'] & { readonly as?: 'exact'; readonly round?: Rounding },
) => string;

/**
 * To mark or cut: the mark of the ruler, with `~` before it where the size lies between two. A panel goes down, and as it
 * must fit beside its gap to the finer mark where it lies on none of the ruler; what is rounded up lies on a mark by intent.
 * What is too small for a mark is written exactly.
 */
export function onRuler(value: number, wanted: Wanted, print: Print): string {
  const { system, round, spoken, ruler = usualRuler[system] } = wanted;
  const mark = round === 'down' && !isOn(value, ruler.mark) ? ruler.fit : ruler.mark;
  const shown = toMark(value, mark, round);
  if (shown === 0) return print(value, { as: 'exact', ...(round && { round }) });
  const text = print(shown, { ...ruler.print, round: 'nearest' });
  if (isOn(value, mark) || round === 'down' || round === 'up') return text;
  return (spoken ? 'about ' : '~') + text;
}

/**
 * What is left free, a gap or play: up to the next finer mark, with the exact number beside it. Less than half of such a
 * mark stands alone.
 */
export function leftFree(value: number, wanted: Wanted, print: Print): string {
  const { system, spoken, ruler = usualRuler[system] } = wanted;
  const exact = print(value, { as: 'exact', round: 'up' });
  if (value < ruler.fit / 2) return exact;
  const text = print(toMark(value, ruler.fit, 'up'), { ...ruler.print, round: 'nearest' });
  if (isOn(value, ruler.fit)) return text;
  return spoken ? `${text}, exactly ${exact}` : `${text} (${exact})`;
}
