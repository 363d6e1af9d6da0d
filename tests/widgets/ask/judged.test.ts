/** "wall 1/4": the size goes into the reader's box, and the check of its rule judges it. */
import { describe, expect, test } from 'vitest';
import type { State } from '../../../src/box/core/verdict.ts';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { INCH, type UnitSystem } from '../../../src/units/index.ts';
import { parse } from '../../../src/units/parse.ts';
import { searchOf } from '../../../src/widgets/ask/search.ts';
import { textsOf } from '../../../src/widgets/ask/texts.ts';
import { askFile } from './site-words.ts';

const search = await searchOf(askFile, parse, exampleFor('mm'));
const first = (question: string, system: UnitSystem) =>
  search.find(question, exampleFor(system), system).answers[0];

/** Ranges as the pages of the rules give them; the example is 7 in (172 mm) long, its walls 5/16 in (8 mm). */
test.each<[question: string, system: UnitSystem, measured: number, state: State]>([
  // One twenty-fifth of 7 in is 0.28 in; a band from 1/30 to 1/20 of it holds 1/4 and not 3/4.
  ['wall 1/4', 'inch', INCH / 4, 'usual'],
  ['walls 3/4 in thick', 'mm', 0.75 * INCH, 'unusual'],
  ['wall 8', 'mm', 8, 'usual'],
  // Solid 6 to 8 mm, plywood 3 to 6 mm.
  ['bottom 4 mm', 'mm', 4, 'unusual'],
  ['4 mm plywood bottom', 'mm', 4, 'usual'],
  ['bottom 6 mm', 'inch', 6, 'usual'],
  // Half the wall to the whole of it.
  ['fingers 3/8', 'inch', 0.375 * INCH, 'unusual'],
  ['fingers 5 mm', 'mm', 5, 'usual'],
  // At most 0.5 mm, 1 mm is still accepted.
  ['diagonals 0.4 mm apart', 'mm', 0.4, 'usual'],
  ['diagonals 0.8 mm apart', 'mm', 0.8, 'unusual'],
  ['diagonals 3 mm apart', 'mm', 3, 'breaks'],
  // 3.2 to 6 mm.
  ['lip 2 mm', 'mm', 2, 'unusual'],
  ['lip 1/8', 'inch', INCH / 8, 'usual'],
  // A lid without play is wider on the dampest day than its grooves are apart.
  ['lid gap 0', 'mm', 0, 'breaks'],
])('“%s” for a reader in %s is %d, and that is %s', (question, system, measured, state) => {
  const answer = first(question, system)!;
  expect(answer.kind).toBe('judged');
  expect(answer.verdict!.measured).toBeCloseTo(measured, 6);
  expect(answer.verdict!.state).toBe(state);
});

describe('a number without a unit', () => {
  test('is one of the reader’s own units where it can be', () => {
    expect(textsOf(first('wall 1/2', 'inch')!.number!()!).inch).toBe('1/2\u00a0in');
    expect(textsOf(first('wall 10', 'mm')!.number!()!).mm).toBe('10\u00a0mm');
  });
  test('and of the others where only they give a size there can be', () => {
    expect(textsOf(first('bottom 6', 'inch')!.number!()!).mm).toBe('6\u00a0mm');
    expect(textsOf(first('wall 3/8', 'mm')!.number!()!).inch).toBe('3/8\u00a0in');
  });
});

test('my own box stays as it is, and the answer says what it has', () => {
  const before = structuredClone(exampleFor('mm'));
  const { says } = first('wall 10 mm', 'mm')!;
  expect(JSON.stringify(says)).toContain('"value":8');
  expect(exampleFor('mm')).toEqual(before);
});

test.each(['6 mm', '28 dominoes', 'bottom 600 mm', 'wall 0', '1/4 ply groove'])(
  '“%s” is no size that a rule could judge',
  (question) => {
    expect(first(question, 'mm')?.kind).not.toBe('judged');
  },
);
