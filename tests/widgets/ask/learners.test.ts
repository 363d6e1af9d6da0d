/** Learners' questions, asked blind: what the pages answer is among the first three, and what they do not say is said to be so. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { parse } from '../../../src/units/parse.ts';
import { searchOf } from '../../../src/widgets/ask/search.ts';
import { textsOf } from '../../../src/widgets/ask/texts.ts';
import { ACCEPTABLE } from './acceptable.ts';
import { LEARNERS } from './learners.ts';
import { askFile } from './site-words.ts';
import { walks } from './walk.ts';

const answerable = (question: string) => ACCEPTABLE[question]!.length > 1;

test('sixty questions, each once and each judged', () => {
  expect(LEARNERS).toHaveLength(60);
  expect(Object.keys(ACCEPTABLE).sort()).toEqual(LEARNERS.map(([question]) => question).sort());
});

describe.each(['mm', 'inch'] as const)('for a reader in %s', (system) => {
  const all = walks(system);
  test.each(all.filter(({ question }) => answerable(question)))(
    '“$question” is answered among the first three',
    ({ answer, found }) => {
      expect(found, answer).toBe(true);
    },
  );
  test.each(all.filter(({ question }) => !answerable(question)))(
    '“$question” has no answer, which is said first, with near doors',
    ({ answer, found }) => {
      expect(found, answer).toBe(true);
    },
  );
  test('the reason is a tap away wherever one is asked for', () => {
    expect(all.filter(({ reason }) => reason === false).map(({ question }) => question)).toEqual([]);
  });
  test('a number stands in the first line wherever one is asked for', () => {
    expect(all.filter(({ number }) => number === false).map(({ question }) => question)).toEqual([]);
  });
});

const search = await searchOf(askFile, parse, exampleFor('mm'));

/** A thirtieth of the length to a twentieth: 10 in give 0.333 to 0.500 in, 240 mm give 8 to 12 mm. */
test.each([
  ['how thick for a box 10 inches long', 'inch', '11/32', '1/2'],
  ['wall thickness for a 240 mm long box', 'mm', '8', '12'],
  ['how thick should the sides be on a 240 mm box', 'mm', '8', '12'],
] as const)('“%s” is answered for that length, not for my box', (question, system, low, high) => {
  const [first] = search.find(question, exampleFor(system), system).answers;
  const number = textsOf(first!.number!()!)[system].replaceAll('\u00a0', ' ');
  expect(number).toMatch(new RegExp(`${low} ?\\w*( to |–)~?${high}`));
});

test.each([
  'how thick a bottom for a box 10 inches long',
  'how thick for a box 3000 mm long',
  'sides 3 in thick',
])('“%s” is not answered by the walls', (question) => {
  const ids = search.find(question, exampleFor('inch'), 'inch').answers.map(({ id }) => id);
  expect(ids).not.toContain('sized:wall');
});
