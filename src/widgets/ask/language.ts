/**
 * From text to what it means: words are brought to their stems, and words or phrases that mean the same in a shop to one
 * concept. Documents and questions are read alike, so that "dado" finds the groove.
 */
import { stemmer } from 'stemmer';
import { fillers } from './fillers.ts';

/** A word, or a phrase that counts as one. */
interface Word {
  readonly text: string;
  /** What it may mean. */
  readonly concepts: readonly string[];
}

/** Words of a text in the order they stand, plain and lower case; numbers are none. */
export const tokensOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/['’‘`´]/g, '')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .split(/[^a-z0-9]+/)
    .filter((token) => /[a-z]/.test(token));

export interface Language {
  /** Words that stand in a group, one by one. */
  readonly tokens: ReadonlySet<string>;
  /** What words in a row mean, the longest phrases first; words that ask for nothing are left out. */
  readonly read: (tokens: readonly string[]) => readonly Word[];
  /** Every concept of a text, also of the words within its phrases. */
  readonly conceptsOf: (text: string) => readonly string[];
}

/** @param groups words and phrases that mean the same, by the concept they are */
export function languageOf(groups: Readonly<Record<string, readonly string[]>>): Language {
  const stems = new Map<string, string>();
  const stemOf = (token: string): string => {
    const known = stems.get(token) ?? stemmer(token);
    stems.set(token, known);
    return known;
  };
  const tokens = new Set<string>();
  /** Concepts by the stems of their phrase, and how many words the longest phrase has that begins with a stem. */
  const phrases = new Map<string, string[]>();
  const longest = new Map<string, number>();
  for (const [name, same] of Object.entries(groups))
    for (const phrase of same) {
      const words = tokensOf(phrase);
      for (const word of words) tokens.add(word);
      const row = words.map(stemOf);
      const key = row.join(' ');
      const concept = `=${name}`;
      const others = phrases.get(key) ?? [];
      if (!others.includes(concept)) phrases.set(key, [...others, concept]);
      longest.set(row[0]!, Math.max(longest.get(row[0]!) ?? 1, row.length));
    }

  /** The word or phrase that begins a row. */
  function first(row: readonly string[], at: number): Word & { readonly length: number } {
    const stem = stemOf(row[at]!);
    for (let length = Math.min(longest.get(stem) ?? 1, row.length - at); length >= 1; length--) {
      const some = row.slice(at, at + length);
      const concepts = phrases.get(some.map(stemOf).join(' '));
      if (concepts) return { text: some.join(' '), concepts, length };
    }
    return { text: row[at]!, concepts: fillers.has(row[at]!) ? [] : [stem], length: 1 };
  }
  const read = (row: readonly string[]): readonly Word[] => {
    const words: Word[] = [];
    for (let at = 0; at < row.length; ) {
      const word = first(row, at);
      if (word.concepts.length > 0) words.push(word);
      at += word.length;
    }
    return words;
  };
  const conceptsOf = (text: string) =>
    read(tokensOf(text)).flatMap(({ text: phrase, concepts }) => {
      const inside = phrase.split(' ');
      return inside.length === 1
        ? concepts
        : [...concepts, ...inside.flatMap((one) => first([one], 0).concepts)];
    });
  return { tokens, read, conceptsOf };
}
