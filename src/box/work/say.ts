/**
 * Sentences that hold numbers, kept as data: the page writes each number in the reader's units, a test as plain text.
 *
 *     say`Cut both to ${mm(200)}.`
 */

import { type FormatOptions, format, type Kind, type UnitSystem } from '../../units/index.ts';
import type { Part, Size } from '../design/part.ts';
import { shownSize } from '../design/shown-size.ts';

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

/** A length in mm, to the nearest step that is shown; `digits` for what is cut finer than 0.1 mm. */
export const mm = (value: number, options: Omit<FormatOptions, 'system'> = {}): Amount => ({
  value,
  kind: 'length',
  denominator: 64,
  ...options,
});
/** The size of a wall, printed as in the cut list: one length never reads 1/32 in here and 1/64 in there. */
export const size = (value: number): Amount => ({ value, kind: 'length' });
/** A finished size of a part, printed as in the cut list. */
export const sizeOf = (part: Part, side: keyof Size): Amount => shownSize(part, 'finished', side);
/** Gaps round up, and are told finer than a rule shows. */
export const gap = (value: number): Amount => ({ value, kind: 'length', round: 'up', as: 'fine' });
/** Panels and tongues round down. */
export const panel = (value: number): Amount => mm(value, { round: 'down' });

/** As plain text in one system of units. */
export const plainly = (words: Words, system: UnitSystem): string =>
  words
    .map((part) => {
      if (typeof part === 'string') return part;
      const { value, kind, ...options } = part;
      return format(value, kind, { ...options, system });
    })
    .join('');
