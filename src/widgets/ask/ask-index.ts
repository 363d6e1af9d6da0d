/** Every entry with the words it can be found by. The library weighs how well words fit where they stand. */
import MiniSearch from 'minisearch';
import type { AskFile, Entry } from './entry.ts';
import { type Language, languageOf, tokensOf } from './language.ts';

/** Where words are looked for: how much they count there, and how far a word found there answers a question. */
const fields = {
  title: { boost: 5, answers: 1 },
  asked: { boost: 4, answers: 1 },
  says: { boost: 1.5, answers: 0.8 },
  text: { boost: 0.6, answers: 0.5 },
} as const;
type Field = keyof typeof fields;

/** How far a word that stands there is one that something is called by, for the spelling. */
const namesBy: Readonly<Record<Field, number>> = { title: 5, asked: 1, says: 0.1, text: 0.1 };
const searched = Object.keys(fields) as readonly Field[];

/** What the library thinks of an entry, and how far each concept of the question is answered by it, 0 to 1. */
export interface Hit {
  readonly entry: Entry;
  readonly score: number;
  readonly answered: (concept: string) => number;
}

export interface AskIndex {
  readonly language: Language;
  /** Words of the texts and how often each stands there; those of titles and groups count more. */
  readonly known: ReadonlyMap<string, number>;
  readonly add: (entries: readonly Entry[]) => void;
  readonly drop: (entries: readonly Entry[]) => void;
  /** Ids of the entries that people ask for in just these words. */
  readonly saidSo: (question: string) => ReadonlySet<string>;
  readonly hits: (concepts: readonly string[]) => readonly Hit[];
}

function textOf(entry: Entry, field: Field, further: AskFile['asked']): string {
  if (field === 'asked') return [...(entry.asked ?? []), ...(further[entry.id] ?? [])].join(' | ');
  // What a wood or a number of the box says is worked out when it is shown; what an exercise asks is answered elsewhere.
  if (field === 'says' && (entry.kind === 'wood' || entry.kind === 'own' || entry.kind === 'exercise'))
    return '';
  const text = entry[field];
  return typeof text === 'string' ? text : (text ?? []).filter((part) => typeof part === 'string').join(' ');
}

export function askIndex({ words, asked }: Pick<AskFile, 'words' | 'asked'>): AskIndex {
  const language = languageOf(words);
  const known = new Map<string, number>();
  const note = (token: string, by: number) => known.set(token, (known.get(token) ?? 0) + by);
  for (const token of language.tokens) note(token, 20);
  const index = new MiniSearch<Entry>({
    fields: [...searched],
    extractField: (entry, field) => (field === 'id' ? entry.id : textOf(entry, field as Field, asked)),
    tokenize: (text) => [...language.conceptsOf(text)],
    processTerm: (term) => term,
    searchOptions: {
      // What is asked for is a concept already, whatever its name would mean when read as words.
      tokenize: (concept) => [concept],
      boost: Object.fromEntries(searched.map((field) => [field, fields[field].boost])),
    },
  });
  const entries = new Map<string, Entry>();
  /** By the words of a phrase in a row. */
  const said = new Map<string, Set<string>>();
  const rowOf = (text: string) => tokensOf(text).join(' ');
  return {
    language,
    known,
    add: (some) => {
      for (const entry of some) {
        if (entries.has(entry.id)) continue;
        entries.set(entry.id, entry);
        index.add(entry);
        for (const phrase of [...(entry.asked ?? []), ...(asked[entry.id] ?? [])])
          said.set(rowOf(phrase), (said.get(rowOf(phrase)) ?? new Set()).add(entry.id));
        for (const field of searched)
          for (const token of tokensOf(textOf(entry, field, asked))) note(token, namesBy[field]);
      }
    },
    drop: (some) => {
      for (const { id } of some) if (entries.delete(id)) index.discard(id);
    },
    saidSo: (question) => said.get(rowOf(question)) ?? new Set(),
    hits: (concepts) =>
      index.search({ combineWith: 'OR', queries: [...concepts] }).map(({ id, score, match }) => ({
        entry: entries.get(id as string)!,
        score,
        answered: (concept) =>
          Math.max(0, ...(match[concept] ?? []).map((field) => fields[field as Field].answers)),
      })),
  };
}
