/** Notebooks of every kind, and a store as browsers have it, for tests of what a reader keeps. */
import fc from 'fast-check';
import { vi } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { encodeStore } from '../../src/notebook/codec.ts';
import { writeDesigns } from '../../src/notebook/designs.ts';
import type { Notebook } from '../../src/notebook/everything/everything.ts';
import { writeNotes } from '../../src/notebook/learning/notes.ts';
import { type Answer, writeAnswers } from '../../src/notebook/recall/answers.ts';
import { writeCells } from '../../src/notebook/scratch/cells.ts';

/** Puts a store in the place of the browser's. @returns its texts, and whether it refuses more of them */
export function standInStore() {
  const texts = new Map<string, string>();
  const store = { texts, refuses: (_key: string): boolean => false };
  vi.stubGlobal('window', {});
  vi.stubGlobal('addEventListener', () => {});
  vi.stubGlobal('dispatchEvent', () => true);
  vi.stubGlobal('StorageEvent', class {});
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => texts.get(key) ?? null,
    removeItem: (key: string) => texts.delete(key),
    setItem: (key: string, text: string) => {
      if (store.refuses(key)) throw new Error('full');
      texts.set(key, text);
    },
  });
  return store;
}

const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 });
const text = fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }).filter((one) => one.trim() !== '');
const slug = fc.stringMatching(/^[a-z][a-z-]{0,12}$/);
const box = fc
  .record({ name: word.filter((one) => one.length <= 40), wall: fc.integer({ min: 5, max: 15 }) })
  .map((some) => ({ ...exampleBox, ...some }));
const place = fc.oneof(
  slug.map((id) => `rules/${id}`),
  fc.tuple(slug, slug).map(([id, step]) => `lessons/${id}#${step}`),
);
export const anyNotes = fc.dictionary(place, text, { maxKeys: 6, noNullPrototype: true });
const answer: fc.Arbitrary<Answer> = fc.tuple(
  fc.integer({ min: 18_000, max: 30_000 }),
  fc.constantFrom('right', 'guessed', 'wrong'),
);
export const anyAnswers = fc.dictionary(
  fc.tuple(slug, fc.integer({ min: 1, max: 9 })).map(([id, at]) => `${id}/${at}`),
  fc.array(answer, { minLength: 1, maxLength: 5 }),
  { maxKeys: 6, noNullPrototype: true },
);
const lessons = fc.dictionary(
  slug,
  fc.record({ steps: fc.dictionary(slug, fc.constantFrom('done', 'skipped'), { noNullPrototype: true }) }),
  { maxKeys: 5, noNullPrototype: true },
);
const json = (of: fc.Arbitrary<unknown>) => of.map((one) => JSON.stringify(one));
const tries = fc.record({
  className: word,
  number: fc.nat(30),
  exercise: slug,
  asked: word,
  entry: word,
  said: word,
  right: fc.boolean(),
});
const cells = fc.array(fc.record({ type: fc.constantFrom('sum', 'note'), text: word }), {
  minLength: 1,
  maxLength: 5,
});

/** What a device may keep: every key or none, and also what no version can read. */
export const anyNotebook: fc.Arbitrary<Notebook> = fc.record(
  {
    box: box.map(encodeStore),
    designs: fc
      .uniqueArray(box, { maxLength: 4, selector: ({ name }) => name })
      .map((boxes) => writeDesigns(boxes.map((one) => ({ name: one.name, box: one })))),
    'designs.damaged': fc.string({ unit: 'binary' }),
    done: json(
      fc.dictionary(word, fc.record({ steps: fc.array(slug), of: slug }), { noNullPrototype: true }),
    ),
    progress: json(fc.record({ lessons, last: slug })),
    guesses: json(fc.dictionary(slug, word, { noNullPrototype: true })),
    recall: anyAnswers.map(writeAnswers),
    notes: anyNotes.map(writeNotes),
    'exercise-member': json(fc.record({ className: word, number: fc.nat(30) })),
    'exercise-tries': json(fc.array(tries, { maxLength: 5 })),
    scratch: cells.map((all) => writeCells(all as Parameters<typeof writeCells>[0])),
    'scratch.before': fc.string(),
    year: json(fc.record({ south: fc.boolean() })),
    units: fc.constantFrom('mm', 'inch'),
    ruler: word,
    'both-units': fc.constantFrom('yes', 'no'),
  },
  { requiredKeys: [], noNullPrototype: true },
);
