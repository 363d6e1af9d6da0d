/** Each question of the table brings up what it must, on both examples; what is no matter of boxes brings up nothing. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { namesOf } from '../../../src/prose/words/glossary.ts';
import { parse } from '../../../src/units/parse.ts';
import { searchOf } from '../../../src/widgets/ask/search.ts';
import { nothing, questions } from './questions.ts';
import { askContent, askFile } from './site-words.ts';

const search = await searchOf(askFile, parse, exampleFor('mm'));
const ask = (question: string, system: 'mm' | 'inch') => search.find(question, exampleFor(system), system);

test('the table has questions enough, each once', () => {
  expect(questions.length).toBeGreaterThanOrEqual(130);
  expect(new Set(questions.map(([question]) => question)).size).toBe(questions.length);
});

describe.each(['mm', 'inch'] as const)('for a reader in %s', (system) => {
  test.each(questions)('“%s” is answered among the first three by %s', (question, ...wanted) => {
    const found = ask(question, system)
      .answers.slice(0, 3)
      .map(({ id }) => id);
    expect(found).toEqual(expect.arrayContaining(wanted));
  });
});

describe('what people say of a trouble', () => {
  const said = askContent.troubles.flatMap(({ id, data }) =>
    data.asked.map((phrase) => [phrase, id] as const),
  );
  test('is written down for each', () => {
    expect(said.length).toBeGreaterThan(250);
  });
  test.each(said)('“%s” finds it among the first three: %s', (phrase, id) => {
    const found = ask(phrase, 'mm').answers.slice(0, 3);
    expect(found.map((one) => one.id)).toContain(`trouble:${id}`);
    expect(found.find((one) => one.id === `trouble:${id}`)!.path).toBe(`troubles/${id}/`);
  });
});

test('a word of the glossary is an answer to what it is, by every name it has', () => {
  expect(askContent.glossary.length).toBeGreaterThan(80);
  const silent = askContent.glossary.flatMap(({ id, data }) =>
    namesOf(data).filter((name) =>
      ask(`what is ${name}`, 'mm').answers.every((answer) => answer.id !== `word:${id}`),
    ),
  );
  expect(silent).toEqual([]);
});

describe('no matter of boxes', () => {
  test.each(nothing)('“%s” has no answer', (question) => {
    expect(ask(question, 'mm').answers.map(({ id }) => id)).toEqual([]);
  });

  test('what is strange is named, and where some of it is known, what comes nearest is offered', () => {
    const { unknown, nearest } = ask('how heavy is a pizza', 'mm');
    expect(unknown).toEqual(['pizza']);
    expect(nearest[0]!.id).toBe('own:mass');
    expect(ask('xyzzy', 'mm')).toMatchObject({ unknown: ['xyzzy'], nearest: [] });
  });
});

describe('a question forgives', () => {
  test.each([
    ['humidty', 'humidity'],
    ['wallnut', 'walnut'],
    ['bottem', 'bottom'],
    ['thickenss of the wall', 'thickness'],
    ['dovetale', 'dovetail'],
    ['mapel', 'maple'],
  ])('“%s” is read as %s, and says so', (typed, meant) => {
    expect(ask(typed, 'mm').readAs.map((one) => one.meant)).toContain(meant);
  });

  test('a word that is known is never read as another', () => {
    for (const word of ['wall', 'walls', 'miter', 'mitre', 'housing', 'gap', 'kerf'])
      expect(ask(word, 'mm').readAs).toEqual([]);
  });

  test('and one that is not known is only read as one that something is called by', () => {
    for (const word of ['case', 'cake', 'tall']) expect(ask(word, 'mm').readAs).toEqual([]);
  });

  test('capitals, marks and curly apostrophes change nothing', () => {
    const plain = ask('lid wont slide', 'mm').answers.map(({ id }) => id);
    for (const typed of ['LID WONT SLIDE', 'Lid won’t slide?!', "  lid   won't slide ", '"lid" won`t slide'])
      expect(ask(typed, 'mm').answers.map(({ id }) => id)).toEqual(plain);
  });

  test('British and US words find the same', () => {
    for (const [us, british] of [
      ['rabbet', 'rebate'],
      ['dado depth', 'housing depth'],
      ['clamp pressure', 'cramp pressure'],
      ['how much lumber', 'how much timber'],
    ] as const)
      expect(ask(british, 'mm').answers[0]!.id).toBe(ask(us, 'mm').answers[0]!.id);
  });
});

test('no question, an endless one and one of signs alone are answered with nothing, at once', () => {
  for (const question of ['', '   ', '1/4', '%$#@!', 'a'.repeat(5000), 'gap '.repeat(2000)])
    expect(() => ask(question, 'mm')).not.toThrow();
  expect(ask('', 'mm').answers).toEqual([]);
});
