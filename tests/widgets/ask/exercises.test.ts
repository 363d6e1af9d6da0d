/** Exercises as answers: first for who wants to practice, and behind the others for who wants to know. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { exercises } from '../../../src/exercises/index.ts';
import { parse } from '../../../src/units/parse.ts';
import { searchOf } from '../../../src/widgets/ask/search.ts';
import { questions } from './questions.ts';
import { askFile } from './site-words.ts';

const search = await searchOf(askFile, parse, exampleFor('mm'));
const without = await searchOf(
  { ...askFile, entries: askFile.entries.filter(({ kind }) => kind !== 'exercise') },
  parse,
  exampleFor('mm'),
);
const find = (of: typeof search, question: string) => of.find(question, exampleFor('mm'), 'mm').answers;

test.each(exercises.map(({ id, title }) => [title, id] as const))(
  '“exercise on %s” leads to it first: %s',
  (title, id) => {
    const [first] = find(search, `exercise on ${title}`);
    expect(first?.id).toBe(`exercise:${id}`);
    expect(first?.path).toBe(`exercises/${id}/`);
  },
);

test.each([
  ['exercise glue area', 'exercise:e11'],
  ['practice diagonals', 'exercise:e8'],
  ['practise swelling', 'exercise:e4'],
])('“%s” leads to %s among the first three', (question, id) => {
  expect(
    find(search, question)
      .slice(0, 3)
      .map((one) => one.id),
  ).toContain(id);
});

test('“exercises” leads to the page of all', () => {
  expect(
    find(search, 'exercises')
      .slice(0, 3)
      .map(({ path }) => path),
  ).toContain('exercises/');
});

describe('who asks about a box', () => {
  test.each(questions.map(([question]) => question))(
    '“%s” has every answer first that it had without',
    (question) => {
      const three = find(without, question)
        .slice(0, 3)
        .map(({ id }) => id);
      expect(
        find(search, question)
          .slice(0, three.length)
          .map(({ id }) => id),
      ).toEqual(three);
    },
  );
});
