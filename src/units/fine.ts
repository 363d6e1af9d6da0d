/**
 * Small lengths: gaps, play, growth, any difference under a quarter of an inch. On a rule 0.97 and 0.65 mm are both
 * 1/32 in, so the number stands in thousandths first, and then what a rule shows of it: "0.040 in, a strong 1/32".
 * Readers in millimeters get hundredths, which need no second name.
 */
import { INCH } from './kinds.ts';
import { type Rounding, roundSteps } from './rounding.ts';

/** From here on a length is written like any other, mm. */
export const FINE_BELOW = INCH / 4;

/** What a rule shows of a small length: in running text, beside a number in a drawing, and for the ear. */
interface Mark {
  readonly text: string;
  readonly label: string;
  readonly words: string;
}

/** Share of a division within which a length is called by the mark, and about the middle within which it lies half way. */
const ON_MARK = 0.08;
const HALF_WAY = 0.08;

const names: Readonly<Record<number, string>> = {
  4: 'quarter',
  8: 'eighth',
  16: 'sixteenth',
  32: 'thirty-second',
  64: 'sixty-fourth',
};

/** A mark as text and as it is spoken: 2 of 64 is "1/32". */
function markAt(count: number, parts: number): readonly [text: string, words: string] {
  const [above, below] = count % 2 === 0 && parts > 4 ? [count / 2, parts / 2] : [count, parts];
  if (above !== count) return markAt(above, below);
  return [`${above}/${below}`, `${above} ${names[below]}${above > 1 ? 's' : ''}`];
}

/**
 * Where a small length lies on a rule in 32nds of an inch, or in 64ths below three quarters of 1/32.
 * @param thousandths of an inch as they are printed, from 0 to 250: what is said of a number must fit what is shown of it
 * @returns nothing below half of 1/64 in, where no rule helps.
 */
function markBeside(thousandths: number): Mark | undefined {
  const parts = thousandths < 0.75 * (1000 / 32) ? 64 : 32;
  const at = (thousandths * parts) / 1000;
  if (at < 0.5) return undefined;
  const below = Math.floor(at);
  const past = at - below;
  if (Math.abs(past - 0.5) <= HALF_WAY) {
    const [next, nextWords] = markAt(below + 1, parts);
    if (below === 0) return { text: `half of ${next}`, label: `half ${next}`, words: `half of ${nextWords}` };
    const [last, lastWords] = markAt(below, parts);
    return {
      text: `half way from ${last} to ${next}`,
      label: `${last} to ${next}`,
      words: `half way from ${lastWords} to ${nextWords}`,
    };
  }
  const [mark, words] = markAt(past < 0.5 ? below : below + 1, parts);
  if (Math.min(past, 1 - past) <= ON_MARK) return { text: mark, label: mark, words };
  return past < 0.5
    ? { text: `a strong ${mark}`, label: `${mark} +`, words: `a strong ${words}` }
    : { text: `a scant ${mark}`, label: `${mark} \u2212`, words: `a scant ${words}` };
}

/** How a small length is asked for; see `FormatOptions`. */
interface Wanted {
  readonly round?: Rounding;
  readonly unit?: boolean;
  readonly spoken?: boolean;
  readonly short?: boolean;
  readonly as?: string;
}

const GAP = '\u00a0';

/** A small length with the mark beside it: always three decimals, so that they compare at a glance. */
export function fineInches(inches: number, { round, spoken, short, as, unit = true }: Wanted): string {
  const count = roundSteps(inches * 1000, round);
  const size = Math.abs(count);
  const mark = unit && as === 'fine' ? markBeside(size) : undefined;
  if (spoken)
    return `${count < 0 ? 'minus ' : ''}${size / 1000}${unit ? ' inches' : ''}${mark ? `, ${mark.words}` : ''}`;
  const beside = !mark
    ? ''
    : short
      ? `${GAP}(${mark.label.replaceAll(' ', GAP)})`
      : `, ${mark.text.replaceAll(/ (?=\d)/g, GAP)}`;
  const number = size === 0 ? '0' : (size / 1000).toFixed(3);
  return `${count < 0 ? '\u2212' : ''}${number}${unit ? `${GAP}in` : ''}${beside}`;
}
