/** Everything a reader keeps: written and read back, brought in, erased and put back; and that nothing is forgotten. */

import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { encodeStore } from '../../src/notebook/codec.ts';
import { readDesigns } from '../../src/notebook/designs.ts';
import { becomes, mergeNotebooks, notebookNow, planOf } from '../../src/notebook/everything/everything.ts';
import { readNotebook, writeNotebook } from '../../src/notebook/everything/file.ts';
import { keys } from '../../src/notebook/everything/keys.ts';
import { decodeNotes, writeNotes } from '../../src/notebook/learning/notes.ts';
import { readAnswers } from '../../src/notebook/recall/answers.ts';
import { decodeCells } from '../../src/notebook/scratch/cells.ts';
import { anyNotebook, standInStore } from './any-notebook.ts';

let store: ReturnType<typeof standInStore>;
beforeEach(() => {
  store = standInStore();
});
const lessonsIn = (text = '{}'): Record<string, { steps: Record<string, string> }> =>
  JSON.parse(text).lessons ?? {};

describe('the list of keys', () => {
  const root = new URL('../../src/', import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|tsx|astro)$/.test(name))
    .map((name) => name.replaceAll('\\', '/'));
  const textOf = (name: string) => readFileSync(new URL(encodeURI(name), root), 'utf8');
  const kept = files.filter((name) =>
    /import \{[^}]*\bsave\b[^}]*\} from '[^']*storage\.ts'/.test(textOf(name)),
  );

  /** The key that an argument of `save` stands for, by the constants of its file and of those beside it. */
  function keyOf(argument: string, file: string): string | undefined {
    const beside = files.filter((one) => one.replace(/[^/]*$/, '') === file.replace(/[^/]*$/, ''));
    const constant = (name: string) =>
      [file, ...(new RegExp(`const ${name} =`).test(textOf(file)) ? [] : beside)]
        .map((one) => new RegExp(`const ${name} = '([^']+)'`).exec(textOf(one))?.[1])
        .find(Boolean);
    const [, literal] = /^'([^']+)'$/.exec(argument) ?? [];
    if (literal) return literal;
    const [, name, ending] = /^`\$\{(\w+)\}([^`]*)`$/.exec(argument) ?? [];
    if (name) return `${constant(name)}${ending}`;
    const [, table, field] = /^(\w+)\.(\w+)$/.exec(argument) ?? [];
    if (table) {
      const body = new RegExp(`const ${table} = \\{([^}]*)\\}`).exec(textOf(file))?.[1] ?? '';
      return new RegExp(`\\b${field}: '([^']+)'`).exec(body)?.[1];
    }
    return constant(argument);
  }
  const calls = kept
    .filter((file) => !file.startsWith('notebook/everything/'))
    .flatMap((file) =>
      [...textOf(file).matchAll(/(?<![\w.])save\(\s*([^,]+?),/g)].map((call) => [file, call[1]!] as const),
    );

  test.each(calls)('has what %s keeps under %s', (file, argument) => {
    const key = keyOf(argument, file);
    expect(key, 'the test can tell the key').toBeDefined();
    expect(Object.keys(keys)).toContain(key);
  });
  test('has nothing that no file keeps', () => {
    const found = new Set(calls.map(([file, argument]) => keyOf(argument, file)));
    expect(Object.keys(keys).filter((key) => !found.has(key))).toEqual([]);
  });
});

describe('a file of everything', () => {
  test('can be read back, whatever was kept', () => {
    fc.assert(
      fc.property(anyNotebook, (kept) => {
        expect(readNotebook(writeNotebook(kept, '2026-11-28'))).toEqual({
          ok: true,
          made: '2026-11-28',
          kept,
          unknown: 0,
        });
      }),
    );
  });

  test('that lost a part or a letter on its way is refused, and never half read', () => {
    fc.assert(
      fc.property(anyNotebook, fc.nat(), (kept, place) => {
        const text = writeNotebook(kept, '2026-11-28').trim();
        expect(readNotebook(text.slice(0, place % text.length)).ok).toBe(false);
        const changed = readNotebook(
          `${text.slice(0, place % text.length)}~${text.slice((place % text.length) + 1)}`,
        );
        // What is not kept may change: the date, and what stands around.
        if (changed.ok) expect(changed.kept).toEqual(kept);
      }),
    );
  });

  test('never throws at another file', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readNotebook(text).ok).toBe(false);
      }),
    );
  });

  test.each([
    ['{"notebook":2,"kept":{}}', 'newer version'],
    ['{"version":1,"box":{"wall":8}}', 'one box'],
    ['{"version":1,"cells":[]}', 'scratch cells'],
    ['{"notebook":1,"check":"x","kept":{"box":4}}', 'damaged'],
    ['{"notebook":1,"check":"x","kept":{"box":"4"}}', 'changed on its way'],
    ['{"hello":1}', 'no notebook'],
    ['{"notebook":1,', 'damaged'],
  ])('%s is refused: it says “%s” and that nothing was changed', (text, words) => {
    const read = readNotebook(text);
    expect(read.ok).toBe(false);
    if (!read.ok) {
      expect(read.message).toContain(words);
      expect(read.message).toContain('Nothing was changed.');
    }
  });

  test('from a version with more in it is read without that, and says how much', () => {
    const read = readNotebook(writeNotebook({ units: 'mm', sawdust: '7' }, '2030-01-01'));
    expect(read).toEqual({ ok: true, made: '2030-01-01', kept: { units: 'mm' }, unknown: 1 });
  });
});

describe('put to what is here', () => {
  test('it takes nothing away: every note, answer, step, design and cell of mine is still there', () => {
    fc.assert(
      fc.property(anyNotebook, anyNotebook, (own, other) => {
        const { kept } = mergeNotebooks(own, other);
        for (const [place, text] of Object.entries(decodeNotes(own.notes)))
          expect(decodeNotes(kept.notes)[place]).toContain(text);
        const answers = readAnswers(kept.recall);
        for (const [id, given] of Object.entries(readAnswers(own.recall)))
          for (const one of given) expect(answers[id]).toContainEqual(one);
        for (const [lesson, { steps }] of Object.entries(lessonsIn(own.progress)))
          for (const [step, state] of Object.entries(steps))
            expect([state, 'done']).toContain(lessonsIn(kept.progress)[lesson]?.steps[step]);
        if (own.designs)
          expect(readDesigns(kept.designs!).good).toEqual(
            expect.arrayContaining(readDesigns(own.designs).good),
          );
        const cells = decodeCells(kept.scratch ?? '', '');
        const mine = decodeCells(own.scratch ?? '', '');
        if (mine.ok && cells.ok) expect(cells.cells).toEqual(expect.arrayContaining([...mine.cells]));
        if (own.box) expect(kept.box).toBe(own.box);
        for (const key of ['units', 'ruler', 'year', 'designs.damaged'])
          if (own[key] !== undefined) expect(kept[key]).toBe(own[key]);
      }),
    );
  });

  test('it brings all of the other: its notes, answers, steps, and its box among the designs', () => {
    fc.assert(
      fc.property(anyNotebook, anyNotebook, (own, other) => {
        const { kept, leftOut } = mergeNotebooks(own, other);
        expect(leftOut).toEqual({});
        for (const [place, text] of Object.entries(decodeNotes(other.notes)))
          expect(decodeNotes(kept.notes)[place]).toContain(text);
        for (const id of Object.keys(readAnswers(other.recall)))
          expect(readAnswers(kept.recall)[id]).toBeDefined();
        for (const lesson of Object.keys(lessonsIn(other.progress)))
          expect(lessonsIn(kept.progress)[lesson]).toBeDefined();
        if (own.box && other.box && own.box !== other.box) {
          const { name: _name, ...made } = JSON.parse(other.box).box;
          expect(
            readDesigns(kept.designs!).good.map((one) => ({ ...one.box, name: undefined })),
          ).toContainEqual({
            ...made,
            name: undefined,
          });
        }
      }),
    );
  });

  test('twice is the same as once', () => {
    fc.assert(
      fc.property(anyNotebook, anyNotebook, (own, other) => {
        const once = mergeNotebooks(own, other).kept;
        const twice = mergeNotebooks(once, other).kept;
        for (const key of ['notes', 'recall', 'scratch', 'exercise-tries', 'progress'])
          expect(twice[key]).toEqual(once[key]);
      }),
    );
  });

  test('two notes at one place stand one below the other', () => {
    const note = (text: string) => ({ notes: writeNotes({ 'rules/finger-fit': text }) });
    expect(decodeNotes(mergeNotebooks(note('mine'), note('theirs')).kept.notes)).toEqual({
      'rules/finger-fit': 'mine\n\ntheirs',
    });
  });

  test('an untouched example gives way to a box', () => {
    const theirs = { box: encodeStore({ ...exampleBox, wall: 9 }) };
    expect(mergeNotebooks({ box: encodeStore(exampleBox) }, theirs).kept.box).toBe(theirs.box);
  });
});

describe('on the device', () => {
  test('erased and put back is as it was', () => {
    fc.assert(
      fc.property(anyNotebook, (kept) => {
        store.texts.clear();
        expect(becomes(kept)).toBe(true);
        expect(notebookNow()).toEqual(kept);
        expect(becomes({})).toBe(true);
        expect([...store.texts.keys()]).toEqual([]);
        expect(becomes(kept)).toBe(true);
        expect(notebookNow()).toEqual(kept);
      }),
    );
  });

  test('what a full store refuses changes nothing', () => {
    const kept = { units: 'mm', notes: writeNotes({ 'rules/finger-fit': 'mine' }) };
    becomes(kept);
    store.refuses = (key) => key.endsWith('.year');
    expect(becomes({ units: 'inch', year: '{}' })).toBe(false);
    expect(notebookNow()).toEqual(kept);
  });

  test('the plan counts what is here, in the file and afterwards', () => {
    const notes = (...places: string[]) =>
      writeNotes(Object.fromEntries(places.map((place) => [`rules/${place}`, 'a'])));
    const now = { notes: notes('a', 'b') };
    const file = { notes: notes('b', 'c'), units: 'mm' };
    expect(planOf(now, file, mergeNotebooks(now, file).kept)).toEqual([
      { key: 'notes', name: 'notes', now: 2, file: 2, after: 3, single: false },
      { key: 'units', name: 'inches or millimeters', now: 0, file: 1, after: 1, single: true },
    ]);
  });
});
