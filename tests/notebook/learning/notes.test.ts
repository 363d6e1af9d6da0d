/** Notes: kept on the device, beside what other tabs wrote, and carried by the file of a box. */
import fc from 'fast-check';
import { beforeEach, expect, test, vi } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { readFile, writeFile } from '../../../src/notebook/files.ts';
import {
  decodeNotes,
  longestNote,
  mergeNotes,
  readNotes,
  writeNotes,
} from '../../../src/notebook/learning/notes.ts';
import { readAnswers, writeAnswers } from '../../../src/notebook/recall/answers.ts';
import { anyAnswers, anyNotes, standInStore } from '../any-notebook.ts';

let store: ReturnType<typeof standInStore>;
beforeEach(() => {
  store = standInStore();
});
/** The module as another visit, or another tab, has it. */
const fresh = async () => {
  vi.resetModules();
  const one = await import('../../../src/notebook/learning/notes.ts');
  one.loadNotes();
  return one;
};
const edge = 'lessons/joint-spacing#edge';
const file = (text: string) => new Blob([text]);

test('a note is found again on the next visit, and an empty one is forgotten', async () => {
  const first = await fresh();
  expect(first.setNote(edge, 'filed 0.2 off')).toBe(true);
  const next = await fresh();
  expect(next.notes.value).toEqual({ [edge]: 'filed 0.2 off' });
  next.setNote(edge, ' \n');
  expect((await fresh()).notes.value).toEqual({});
});

test('a tab keeps what another tab wrote meanwhile at another place', async () => {
  const one = await fresh();
  const other = await fresh();
  other.setNote('rules/finger-fit', 'theirs');
  one.setNote(edge, 'mine');
  expect((await fresh()).notes.value).toEqual({ 'rules/finger-fit': 'theirs', [edge]: 'mine' });
});

test('a store that refuses is told, and the note stays on the page', async () => {
  store.refuses = () => true;
  const one = await fresh();
  expect(one.setNote(edge, 'mine')).toBe(false);
  expect(one.notes.value).toEqual({ [edge]: 'mine' });
});

test('notes and answers can be read back, whatever is written', () => {
  fc.assert(
    fc.property(anyNotes, anyAnswers, (notes, answers) => {
      expect(decodeNotes(writeNotes(notes))).toEqual(notes);
      expect(readAnswers(writeAnswers(answers))).toEqual(answers);
    }),
  );
});

test('what is no note and no answer is dropped, whatever stands in the store', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      expect(decodeNotes(text)).toEqual({});
      expect(readAnswers(text)).toEqual({});
    }),
  );
  expect(
    readNotes({ [edge]: 'good', 'https://elsewhere': 'bad', 'rules/../x': 'bad', 'rules/a': 4 }),
  ).toEqual({
    [edge]: 'good',
  });
});

test('notes with no room stay out and are counted; the own ones stay', () => {
  const long = 'a'.repeat(4 * longestNote);
  const found = mergeNotes({ [edge]: long }, { [edge]: 'b'.repeat(4 * longestNote) });
  expect(found).toEqual({ notes: { [edge]: long }, leftOut: 1 });
});

test('the file of a box carries the notes, and is as every version reads it where there are none', async () => {
  await fc.assert(
    fc.asyncProperty(anyNotes, async (notes) => {
      const opened = await readFile(file(writeFile(exampleBox, notes)));
      expect(opened).toEqual({ ok: true, box: exampleBox, dropped: [], notes });
    }),
  );
  expect(JSON.parse(writeFile(exampleBox)).version).toBe(1);
  expect(JSON.parse(writeFile(exampleBox, { [edge]: 'mine' })).version).toBe(2);
});

test('an older file is read, a newer one is refused, and a whole notebook is sent to its page', async () => {
  const old = JSON.stringify({ version: 1, box: exampleBox });
  expect(await readFile(file(old))).toEqual({ ok: true, box: exampleBox, dropped: [], notes: {} });
  const newer = await readFile(file(JSON.stringify({ version: 3, box: exampleBox, notes: {} })));
  expect(newer).toMatchObject({ ok: false, message: 'The box in this file is from another version.' });
  const whole = await readFile(file('{"notebook":1,"kept":{}}'));
  expect(whole).toMatchObject({ ok: false, message: expect.stringContaining('My notebook') });
});
