/** What a word of the glossary is, and where a text uses it. Pure. */

export interface Word {
  /** The US word. */
  readonly term: string;
  /** What it is called in Britain, where that differs. */
  readonly uk?: readonly string[] | undefined;
  readonly also?: readonly string[] | undefined;
  readonly means: string;
  /** How texts use it, where its names alone would find too little or too much. */
  readonly found?: readonly string[] | undefined;
}

export type Glossary = Readonly<Record<string, Word>>;

/** Every name of a word, the US one first. */
export const namesOf = ({ term, uk = [], also = [] }: Word): readonly string[] => [term, ...uk, ...also];

/** Where its meaning stands on the page of words. */
export const anchorOfWord = (id: string) => `word-${id}`;

export interface Use {
  readonly id: string;
  /** Where it starts in the text, and how many characters it has. */
  readonly at: number;
  readonly length: number;
}

const escaped = (phrase: string) => phrase.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/[ -]/g, '[\\s-]');

/**
 * Finds the words of a glossary in a text, in its order: whole words, also with an s, a longer phrase before a shorter
 * one in it, so that a stopped groove is no use of “groove”.
 */
export function finderOf(glossary: Glossary): (text: string) => readonly Use[] {
  const forms = new Map<string, string>();
  for (const [id, word] of Object.entries(glossary))
    for (const form of word.found ?? namesOf(word)) forms.set(form.toLowerCase(), id);
  const longestFirst = [...forms.keys()].sort((one, other) => other.length - one.length);
  const pattern = new RegExp(
    `(?<![\\p{L}\\d-])(${longestFirst.map(escaped).join('|')})s?(?![\\p{L}\\d-])`,
    'giu',
  );
  const idOf = (form: string) =>
    forms.get(form) ?? [...forms].find(([known]) => flat(known) === flat(form))?.[1];
  return (text) =>
    [...text.matchAll(pattern)].map((match) => ({
      id: idOf(match[1]!.toLowerCase())!,
      at: match.index,
      length: match[0].length,
    }));
}

/** “Flat-sawn” and “flat sawn” are one phrase. */
const flat = (phrase: string) => phrase.replace(/[\s-]+/g, ' ');
