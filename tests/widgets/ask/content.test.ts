/** The words of the question field are whole: every name in them stands for something. */
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { wholeModel } from '../../../src/box/whole/index.ts';
import { rulesBehind } from '../../../src/prose/trouble-links.ts';
import { ownOf } from '../../../src/widgets/ask/own.ts';
import { ownAmounts } from '../../../src/widgets/ask/own-amounts.ts';
import { ownNumbers } from '../../../src/widgets/ask/own-numbers.ts';
import { ownParts } from '../../../src/widgets/ask/own-parts.ts';
import { ownWhole } from '../../../src/widgets/ask/own-whole.ts';
import { ownWork } from '../../../src/widgets/ask/own-work.ts';
import { pages } from '../../../src/widgets/ask/pages.ts';
import { woodEntries } from '../../../src/widgets/ask/wood-entries.ts';
import { nothing, questions } from './questions.ts';
import { askContent, askFile } from './site-words.ts';

/** Everything that can be an answer, of boxes that open in each way and join in each. */
const ids = new Set(
  Object.keys(fields.kind.options).flatMap((kind) =>
    Object.keys(fields.joint.options).flatMap((joint) => {
      const own = ownOf({ ...exampleBox, kind: kind as 'sliding', joint: joint as 'finger' });
      return [
        ...askFile.entries,
        ...pages,
        ...ownParts(own),
        ...ownWhole(own),
        ...ownWork(own),
        ...ownAmounts(own),
        ...ownNumbers(own),
        ...woodEntries(own.box, askFile.stillWoods),
      ].map(({ id }) => id);
    }),
  ),
);
const rules = new Set(askContent.rules.map(({ id }) => id));
const checks = new Set(wholeModel.checks.map(({ id }) => id));

describe('words', () => {
  test('no phrase stands twice in a group, and a group has at least two words', () => {
    for (const { id, data } of askContent.words) {
      expect(new Set(data.same).size, id).toBe(data.same.length);
      expect(data.same.length, id).toBeGreaterThan(1);
    }
  });
});

describe('troubles', () => {
  test.each(askContent.troubles)('$id names rules, checks and results there are', ({ data }) => {
    for (const id of rulesBehind(data)) expect(rules).toContain(id);
    for (const id of data.checks) expect(checks).toContain(id);
  });

  test('no phrase is asked of two troubles', () => {
    const phrases = askContent.troubles.flatMap(({ data }) => data.asked);
    expect(phrases.filter((one, at) => phrases.indexOf(one) !== at)).toEqual([]);
  });
});

test('what is asked for by other words is an answer of some box', () => {
  expect(askContent.asked.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
});

test('the table of questions wants only what can be an answer', () => {
  const wanted = questions.flatMap(([, ...some]) => some).filter((id) => !id.startsWith('judged:'));
  expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
  expect(nothing.length).toBeGreaterThan(9);
});

test('every answer has an id of its own', () => {
  const own = ownOf(exampleBox);
  const all = [
    ...askFile.entries,
    ...pages,
    ...ownParts(own),
    ...ownWhole(own),
    ...ownWork(own),
    ...ownAmounts(own),
    ...ownNumbers(own),
  ];
  const twice = all.map(({ id }) => id).filter((id, index, some) => some.indexOf(id) !== index);
  expect(twice).toEqual([]);
});
