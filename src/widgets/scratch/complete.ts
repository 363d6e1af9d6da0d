/** Which names complete what is being typed, and what is told of a function while it is being filled in. */
import type { Listed } from '../../notebook/scratch/listed.ts';

/** A name as the list shows it; own names of the reader have no value yet. */
export interface Offer {
  readonly name: string;
  /** What stands in the cell when it is taken: a relation opens its parenthesis. */
  readonly text: string;
  readonly meaning: string;
}

const mostOffers = 7;

/** The name that ends at the caret. */
export function wordAt(text: string, caret: number): { readonly from: number; readonly word: string } {
  const word = /[\p{L}_][\p{L}\p{N}_.]*$/u.exec(text.slice(0, caret))?.[0] ?? '';
  return { from: caret - word.length, word };
}

/** Names that the reader gives in cells: `gap = …`, `f(x) = …`. */
export const ownNames = (texts: readonly string[]): readonly Offer[] =>
  [
    ...new Set(
      texts.flatMap((text) =>
        [...text.matchAll(/(?:^|;)\s*([\p{L}][\p{L}\p{N}_]*)\s*(\([^()=]*\))?\s*=(?!=)/gu)].map(
          ([, name, called]) => `${name}${called ? '(' : ''}`,
        ),
      ),
    ),
  ].map((text) => ({ name: text.replace('(', ''), text, meaning: 'your own' }));

export const offerOf = (listed: Listed, meaning: string): Offer => ({
  name: listed.name,
  text: listed.type === 'number' ? listed.name : `${listed.name}(`,
  meaning,
});

const plain = (text: string) => text.toLowerCase().replaceAll('.', '');

/** Offers for a word, best first: names that begin with it, then those that hold it, then meanings that do; short ones first. */
export function offersFor(word: string, all: readonly Offer[]): readonly Offer[] {
  const asked = plain(word);
  if (asked.length < 2) return [];
  const rank = ({ name, meaning }: Offer): number => {
    const own = plain(name);
    const parts = name.toLowerCase().split('.');
    if (own === asked || parts.at(-1) === asked) return 0;
    if (own.startsWith(asked) || parts.some((part) => part.startsWith(asked))) return 1;
    if (own.includes(asked)) return 2;
    return asked.length > 2 && meaning.toLowerCase().includes(asked) ? 3 : 9;
  };
  const ranked = all.map((offer) => ({ offer, at: rank(offer) })).filter(({ at }) => at < 9);
  // A name that is written in full needs no help.
  if (all.some(({ text }) => text === word)) return [];
  return ranked
    .sort((a, b) => a.at - b.at || a.offer.name.length - b.offer.name.length)
    .slice(0, mostOffers)
    .map(({ offer }) => offer);
}

/** The function whose parenthesis is open at the caret. */
export function openCall(text: string, caret: number): string | undefined {
  let closed = 0;
  for (let at = caret - 1; at >= 0; at--) {
    if (text[at] === ')') closed++;
    if (text[at] === '(' && closed-- === 0) return wordAt(text, at).word || undefined;
  }
  return undefined;
}
