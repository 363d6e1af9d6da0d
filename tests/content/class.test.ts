/** The course for a class: what its blocks name is there, and their minutes, questions and tasks come out as they should. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import {
  minutesOfBlock,
  named,
  phases,
  questionsOfBlock,
  stepOfGuess,
  timetable,
} from '../../src/prose/class/blocks.ts';
import { answersOf, taskIn } from '../../src/prose/class/paper-tasks.ts';
import { rubricRows } from '../../src/prose/class/rubric.ts';
import { lessons as lessonsOnPages } from '../../src/prose/lessons.ts';
import { glossary, lessons, rules, tableOf } from './content.ts';

interface Block {
  readonly order: number;
  readonly title: string;
  readonly question: string;
  readonly lessons: readonly string[];
  readonly rules: readonly string[];
  readonly words: readonly string[];
  readonly guess: { readonly lesson: string; readonly of: string };
  readonly figure: string;
  readonly worked: string;
  readonly exercise: string;
  readonly cautions?: readonly string[];
  readonly exit: string;
}
const folder = new URL('../../content/class/blocks/', import.meta.url);
const blocks = readdirSync(folder)
  .map((name) => ({
    id: name.replace(/\.yaml$/, ''),
    data: parse(readFileSync(new URL(name, folder), 'utf8')) as Block,
  }))
  .sort((a, b) => a.data.order - b.data.order);
const lessonOf = (id: string) => lessons.find((lesson) => lesson.id === id)!;

test('the course has eight blocks, numbered from 1', () => {
  expect(blocks.map(({ data }) => data.order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  for (const { id, data } of blocks) expect(id).toMatch(new RegExp(`^${data.order}-`));
});

describe.each(blocks)('the block $id', ({ data }) => {
  test('names lessons, rules and words that exist, each once', () => {
    for (const [some, all] of [
      [data.lessons, lessons.map(({ id }) => id)],
      [[...data.rules], rules.map(({ id }) => id)],
      [data.words, Object.keys(glossary)],
    ] as const) {
      expect(new Set(some).size).toBe(some.length);
      for (const id of some) expect(all).toContain(id);
    }
    for (const id of [data.figure, data.worked]) expect(rules.map((rule) => rule.id)).toContain(id);
  });

  test('has eight to ten words', () => {
    expect(data.words.length).toBeGreaterThanOrEqual(8);
    expect(data.words.length).toBeLessThanOrEqual(10);
  });

  test('shows a guess that stands in its lesson, and an exercise with numbers', () => {
    expect(stepOfGuess('', lessonOf(data.guess.lesson).body, data.guess.of)).not.toBe('');
    expect(taskIn(lessonOf(data.exercise).body)?.sets.length).toBeGreaterThanOrEqual(3);
  });

  test('asks a question and tells what each learner shows at the end', () => {
    expect(data.question).toMatch(/\?$/);
    expect(data.exit).toMatch(/\.$/);
  });
});

test('together the blocks name every lesson', () => {
  const namedLessons = blocks.flatMap(({ data }) => data.lessons);
  expect(lessons.map(({ id }) => id).filter((id) => !namedLessons.includes(id))).toEqual([]);
  expect(new Set(namedLessons).size).toBe(namedLessons.length);
});

test('a block takes 90 minutes: 5, 10, 15, 45, 10 and 5', () => {
  expect(Object.values(phases).map(({ minutes }) => minutes)).toEqual([5, 10, 15, 45, 10, 5]);
  expect(minutesOfBlock).toBe(90);
  expect(timetable.at(0)).toMatchObject({ from: 0, to: 5 });
  expect(timetable.at(3)).toMatchObject({ from: 30, to: 75 });
  expect(timetable.at(-1)).toMatchObject({ from: 85, to: 90 });
});

describe('a wrong name stops the build and says which there are', () => {
  test('of a lesson', () => {
    expect(() => named('4-corners', 'lessons', [{ id: 'no-such' }], [{ id: 'joint-spacing' }])).toThrow(
      /lessons of the block 4-corners.*no-such.*joint-spacing/,
    );
  });
  test('of a guess', () => {
    const body = '<Step of="one">\n<Guess of="left">x</Guess>\n</Step>\n<Step of="two">';
    expect(stepOfGuess('b', body, 'left')).toBe('one');
    expect(() => stepOfGuess('b', body, 'right')).toThrow(/guess of the block b.*right.*left/);
  });
});

describe('the three questions at the start', () => {
  const question = (ask: string) => ({ ask, options: ['yes', 'no'], right: 0, because: '' });
  const lesson = (id: string) => ({
    id,
    data: { recall: [1, 2, 3].map((number) => question(`${id}${number}`)) },
  });
  const course = [[lesson('a'), lesson('b')], [lesson('c'), lesson('d')], [lesson('e')]];
  const asked = (block: number) => questionsOfBlock(course, block).map(({ ask }) => ask[0]);

  test('come from lessons of earlier blocks, the latest first', () => {
    expect(asked(1)).toEqual(['b', 'a', 'b']);
    expect(asked(2)).toEqual(['d', 'c', 'b']);
  });
  test('of the first block are its own', () => {
    expect(asked(0)).toEqual(['a', 'a', 'a']);
  });
});

describe('a task on paper', () => {
  test('has the question, the numbers and the slips that the author wrote', () => {
    const task = taskIn(
      `Text.\n<NewNumbers ask="How far?" tell={['wall']} sets={[{ wall: 12 }, { wall: 9.525 }]} result="grooveStop" within={0.3} slips={[{ result: 'keyLeft', times: 2, says: 'That is twice it.' }]} />`,
    );
    expect(task).toEqual({
      ask: 'How far?',
      tell: ['wall'],
      sets: [{ wall: 12 }, { wall: 9.525 }],
      result: 'grooveStop',
      within: 0.3,
      slips: [{ result: 'keyLeft', times: 2, says: 'That is twice it.' }],
    });
  });
  test('is missing where a lesson has none', () => {
    expect(taskIn('Text alone.')).toBeUndefined();
  });
  test('has the answers that a hand finds: a wall of 12 less a groove of 4 stops the groove at 8', () => {
    const id = 'where-the-groove-shows';
    const [first] = answersOf(taskIn(lessonOf(id).body)!, lessonsOnPages[id]!);
    expect(first!.told.map(({ value }) => value)).toEqual([12, 4]);
    expect(first!.answer).toBeCloseTo(8, 6);
  });
  test('has for the board of a box 250 by 150 with 3 mm of kerf 821 mm, and without the cuts 800', () => {
    const id = 'grain-round-the-corner';
    const [first] = answersOf(taskIn(lessonOf(id).body)!, lessonsOnPages[id]!);
    expect(first!.answer).toBeCloseTo(821, 6);
    expect(first!.slips[0]!.value).toBeCloseTo(800, 6);
  });
});

test('the rubric has four levels for each of ten things, and empty columns to fill in', () => {
  const items = Object.values(
    tableOf<{ order: number; item: string; how: string; levels: string[] }>('class/rubric.yaml'),
  );
  expect(items.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  const rows = rubricRows(items);
  expect(Object.keys(rows[0]!)).toEqual([
    'item',
    'how it is measured',
    '4 points',
    '3 points',
    '2 points',
    '1 points',
    'measured',
    'points given',
  ]);
  for (const row of rows) expect(Object.values(row).filter((text) => text === '')).toHaveLength(2);
});
