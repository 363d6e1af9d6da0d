/** What this version cannot read is never written over without a copy. */
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { mergeNotebooks } from '../../src/notebook/everything/everything.ts';
import { standInStore } from './any-notebook.ts';

let store: ReturnType<typeof standInStore>;
beforeEach(() => {
  store = standInStore();
  vi.resetModules();
});
const at = (key: string) => `rule-and-reason.${key}`;

/** Each key that is read and then written over by the next change: how that change comes about. */
const writers: Record<string, () => Promise<void>> = {
  notes: async () => {
    const { loadNotes, setNote } = await import('../../src/notebook/learning/notes.ts');
    loadNotes();
    setNote('rules/finger-fit', 'new');
  },
  recall: async () => {
    const { loadAnswers, addAnswer } = await import('../../src/notebook/recall/answers.ts');
    loadAnswers();
    addAnswer('joint-spacing/1', 20785, 'right');
  },
  guesses: async () => {
    const { loadGuesses, rememberGuess } = await import('../../src/notebook/predictions.ts');
    loadGuesses();
    rememberGuess('wall', '8');
  },
  progress: async () => {
    const { loadProgress, finish } = await import('../../src/notebook/progress.ts');
    loadProgress();
    finish('joint-spacing', 'edge', 'done');
  },
  done: async () => {
    const { loadDone, tick } = await import('../../src/notebook/done.ts');
    const { exampleBox } = await import('../../src/box/subjects/example.ts');
    loadDone();
    tick(exampleBox, 'mill', true);
  },
  'exercise-tries': async () => {
    const { loadExercises, addTry } = await import('../../src/notebook/learning/exercises.ts');
    loadExercises(undefined);
    const who = { className: '7b', number: 1, exercise: 'e1', asked: 'a' };
    addTry({ ...who, entry: 'b', said: 'c', right: true });
  },
  'exercise-member': async () => {
    const { loadExercises, chooseMember } = await import('../../src/notebook/learning/exercises.ts');
    loadExercises(undefined);
    chooseMember({ className: '7b', number: 1 });
  },
  sheets: async () => {
    const { loadSheets, keepSheets } = await import('../../src/notebook/learning/sheets.ts');
    loadSheets();
    keepSheets({ className: 'a', learners: 2, system: 'mm', paper: 'A4', print: 'both', exercises: [] });
  },
  year: async () => {
    const { loadYear, chooseYear } = await import('../../src/notebook/measure/year.ts');
    loadYear();
    chooseYear({ built: 3 });
  },
};
const asides = async () => {
  const { readAsides, damaged } = await import('../../src/notebook/aside.ts');
  return { texts: readAsides(store.texts.get(at('set-aside'))), said: damaged.value };
};

describe.each(Object.entries(writers))('under %s', (key, write) => {
  test.each([
    ['cut off', '{"version":1,"no'],
    ['a newer version', '{"version":2,"pages":["mine"]}'],
    ['another shape', '{"pages":["mine"]}'],
  ])('%s is set aside before the next change, and told', async (_, text) => {
    store.texts.set(at(key), text);
    await write();
    expect(store.texts.get(at(key))).not.toBe(text);
    const { texts, said } = await asides();
    expect(texts).toEqual([{ key, text }]);
    expect(said?.text).toBe(text);
    expect(said?.message).toContain('set aside');
  });

  test('what it wrote itself is read without a word', async () => {
    await write();
    vi.resetModules();
    await write();
    expect(await asides()).toEqual({ texts: [], said: undefined });
  });

  test('nothing hostile makes it throw', async () => {
    const deep = `{"version":1,"notes":${'['.repeat(20_000)}${']'.repeat(20_000)}}`;
    const texts = fc.oneof(
      fc.json(),
      fc.string({ unit: 'binary' }),
      fc.constantFrom(deep, '{"__proto__":{"a":1}}'),
    );
    await fc.assert(
      fc.asyncProperty(texts, async (text) => {
        vi.resetModules();
        store.texts.clear();
        store.texts.set(at(key), text);
        await write();
      }),
      { numRuns: 40 },
    );
  });
});

test('a newer version in another tab: its notes are set aside by the tab that cannot read them', async () => {
  const { loadNotes, setNote } = await import('../../src/notebook/learning/notes.ts');
  loadNotes();
  setNote('rules/finger-fit', 'old page');
  const newer = '{"version":2,"notes":{"rules/finger-fit":{"text":"new page"}}}';
  store.texts.set(at('notes'), newer);
  setNote('rules/finger-fit', 'old page again');
  expect((await asides()).texts).toEqual([{ key: 'notes', text: newer }]);
});

test('the same text is set aside once, and the oldest of many go', async () => {
  const { keepAside, readAsides } = await import('../../src/notebook/aside.ts');
  for (let round = 0; round < 30; round++) for (const _ of [1, 2]) keepAside('notes', `text ${round}`);
  expect(readAsides(store.texts.get(at('set-aside'))).map(({ text }) => text)).toEqual(
    Array.from({ length: 20 }, (_, i) => `text ${i + 10}`),
  );
});

test('a file that is put to unreadable notes keeps a copy of them', () => {
  const own = { notes: '{"version":2,"pages":["mine"]}' };
  const { kept } = mergeNotebooks(own, { notes: '{"version":1,"notes":{"rules/finger-fit":"theirs"}}' });
  expect(JSON.parse(kept['set-aside']!).texts).toEqual([{ key: 'notes', text: own.notes }]);
});

test('a file whose texts are nested without end changes nothing', () => {
  const deep = `[{"a":${'['.repeat(50_000)}${']'.repeat(50_000)}}]`;
  const own = {
    'exercise-tries': '[]',
    done: '{}',
    notes: '{"version":1,"notes":{"rules/finger-fit":"mine"}}',
  };
  const { kept } = mergeNotebooks(own, { 'exercise-tries': deep, done: deep, notes: deep });
  expect(kept).toEqual(own);
});

describe('a store that is emptied or full while the page is open', () => {
  test('loses no note: the next one writes all of them again', async () => {
    const { loadNotes, setNote } = await import('../../src/notebook/learning/notes.ts');
    loadNotes();
    setNote('rules/finger-fit', 'first');
    store.texts.clear();
    setNote('rules/wall-thickness', 'second');
    store.refuses = () => true;
    expect(setNote('rules/panel-gap', 'third')).toBe(false);
    store.refuses = () => false;
    setNote('rules/lid-play', 'fourth');
    expect(JSON.parse(store.texts.get(at('notes'))!).notes).toEqual({
      'rules/finger-fit': 'first',
      'rules/wall-thickness': 'second',
      'rules/panel-gap': 'third',
      'rules/lid-play': 'fourth',
    });
  });

  test('loses no answer and no step of a lesson', async () => {
    const { loadAnswers, addAnswer } = await import('../../src/notebook/recall/answers.ts');
    const { loadProgress, finish } = await import('../../src/notebook/progress.ts');
    loadAnswers();
    loadProgress();
    addAnswer('joint-spacing/1', 20785, 'right');
    finish('joint-spacing', 'edge', 'done');
    store.texts.clear();
    // February 29, 2028, under a clock that ran ahead.
    addAnswer('wood-movement/1', 21243, 'wrong');
    finish('wood-movement', 'ring', 'done');
    expect(Object.keys(JSON.parse(store.texts.get(at('recall'))!).answers)).toEqual([
      'joint-spacing/1',
      'wood-movement/1',
    ]);
    expect(Object.keys(JSON.parse(store.texts.get(at('progress'))!).lessons)).toEqual([
      'joint-spacing',
      'wood-movement',
    ]);
  });
});

test('a box may be called “constructor” or “__proto__”: it has no ticks until one is set', async () => {
  const { loadDone, doneOf, tick } = await import('../../src/notebook/done.ts');
  const { exampleBox } = await import('../../src/box/subjects/example.ts');
  loadDone();
  for (const name of ['constructor', '__proto__', 'toString']) {
    const box = { ...exampleBox, name, wall: 6 + name.length / 4 };
    expect(doneOf(box)).toEqual({ steps: new Set(), changed: false });
    tick(box, 'mill', true);
    expect(doneOf(box).steps).toEqual(new Set(['mill']));
  }
});
