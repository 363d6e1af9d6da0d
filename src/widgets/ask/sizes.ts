/** Sizes in a question: "wall 1/4", "bottom 6 mm", "humidity 70 %". */
import type { Kind, UnitSystem } from '../../units/index.ts';
import type { parse } from '../../units/parse.ts';

/** Reading of numbers: a file that pages fetch late, so whoever asks brings it along. */
export type ReadNumber = typeof parse;

/** A number as it was typed, and the text without it. */
export interface Asked {
  readonly typed: string;
  readonly rest: string;
}

const NUMBER =
  /(?<![\w.,/])(\d+(?:[- ]\d+)?\s*\/\s*\d+|\d*[.,]?\d+|[¼½¾⅛⅜⅝⅞])\s*(mm|millimet(?:er|re)s?|cm|inch(?:es)?|in\b|"|”|''|%|percent|°|degrees?|deg|points?)?(?![\w/])/i;

/** The first number of a question. */
export function numberIn(question: string): Asked | undefined {
  const found = NUMBER.exec(question);
  if (!found) return undefined;
  const rest = `${question.slice(0, found.index)} ${question.slice(found.index + found[0].length)}`;
  return { typed: found[0].trim(), rest };
}

interface Limits {
  readonly kind: Kind;
  readonly low: number;
  readonly high: number;
}

/**
 * The size that is meant, in the stored unit of its kind. Without a unit it is one of the reader's own, or of the other
 * system where only that gives a size this can be: "bottom 6" is 6 mm for everybody.
 */
export function sizeOf(
  read: ReadNumber,
  typed: string,
  { kind, low, high }: Limits,
  system: UnitSystem,
): number | undefined {
  const text = typed.replace(/(\d)-(\d)/, '$1 $2').replace(/degrees?|deg/i, '°');
  const [own, other] = [system, system === 'mm' ? ('inch' as const) : ('mm' as const)].map((units) => {
    const found = read(text, kind, units);
    return found.ok && found.value >= low && found.value <= high ? found.value : undefined;
  });
  return own ?? other;
}
