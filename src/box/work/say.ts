/**
 * Sentences that hold numbers, kept as data: the page writes each number in the reader's units, a test as plain text.
 *
 *     say`Cut both to ${size(200)}.`
 */

import {
  type FormatOptions,
  format,
  type Kind,
  type Rounding,
  type UnitSystem,
  usualRuler,
} from '../../units/index.ts';
import type { Part, Size } from '../design/part.ts';
import { shownLength, shownSize } from '../design/shown-size.ts';

/** A number in a sentence. */
export interface Amount extends Omit<FormatOptions, 'system'> {
  readonly value: number;
  readonly kind: Kind;
}

export type Words = readonly (string | Amount)[];

/** A sentence from a template; words inside words are taken in. */
export function say(texts: TemplateStringsArray, ...between: (string | Amount | Words)[]): Words {
  return texts.flatMap((text, index) => {
    const next = between[index];
    return [text, ...(next === undefined ? [] : isWords(next) ? next : [next])];
  });
}

const isWords = (value: string | Amount | Words): value is Words => Array.isArray(value);

/** A size to mark or cut, on the reader's ruler as in the cut list: one length never reads 1/32 in here and 1/64 in there. */
export const size = shownLength;
/** A finished size of a part, printed as in the cut list. */
export const sizeOf = (part: Part, side: keyof Size): Amount => shownSize(part, 'finished', side);
/** Panels and tongues round down. */
export const panel = (value: number): Amount => shownLength(value, 'down');
/** Gaps round up, the exact number beside. */
export const gap = (value: number): Amount => ({ value, kind: 'length', as: 'left' });
/** What no rule shows well enough: a tolerance, a fit, the width of a groove. */
export const fine = (value: number, round?: Rounding): Amount => ({
  value,
  kind: 'length',
  as: 'fine',
  ...(round && { round }),
});

/** As plain text in one system of units. */
export const plainly = (words: Words, system: UnitSystem, ruler = usualRuler[system]): string =>
  words
    .map((part) => {
      if (typeof part === 'string') return part;
      const { value, kind, ...options } = part;
      return format(value, kind, { ...options, system, ruler });
    })
    .join('');
