/** Words that are not known as they are typed: the beginning of one, or one misspelled. */
import SearchableMap from 'minisearch/SearchableMap';

export interface Spelling {
  /** Known words that begin so, the commonest first. */
  readonly beginning: (typed: string) => readonly string[];
  /** The known word that was meant, as far as one can tell. */
  readonly meant: (typed: string) => string | undefined;
}

const letters = (word: string) => [...word].sort().join('');

/**
 * Whether a word may have been meant: it begins alike, and the shorter it is, the less may be wrong. In four letters one is
 * missing, doubled or out of place; a wrong one would make "cake" of "case".
 */
function isNear(typed: string, word: string, distance: number): boolean {
  if (word[0] !== typed[0]) return false;
  if (letters(word) === letters(typed)) return true;
  if (typed.length < 5) return distance === 1 && word.length !== typed.length;
  return distance === 1 || typed.length >= 7;
}

/** Words that something is called by: those of titles and groups, which count so often at least. */
const asNames = 5;

/** @param known words with how often each stands in the texts */
export function spellingOf(known: ReadonlyMap<string, number>): Spelling {
  const map = new SearchableMap<number>();
  for (const [word, often] of known) map.set(word, often);
  return {
    beginning: (typed) =>
      [...map.atPrefix(typed).entries()]
        .sort(([, a], [, b]) => b - a)
        .slice(0, 5)
        .map(([word]) => word),
    meant: (typed) => {
      if (typed.length < 4) return undefined;
      return [...map.fuzzyGet(typed, 2)]
        .filter(([word, [often, distance]]) => often >= asNames && isNear(typed, word, distance))
        .sort(
          ([one, [often, near]], [other, [oftener, nearer]]) =>
            Number(letters(other) === letters(typed)) - Number(letters(one) === letters(typed)) ||
            near - nearer ||
            oftener - often,
        )[0]?.[0];
    },
  };
}
