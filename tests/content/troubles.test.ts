/** Troubles name only numbers the model has, and whatever they lead to leads back. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { evaluate, verdicts, wholeModel } from '../../src/box/whole/index.ts';
import { type RuleCaution, textsOf } from '../../src/prose/cautions.ts';
import { ruleFigures } from '../../src/prose/rule-figures/index.tsx';
import { rulesBehind, troublesOfLesson, troublesOfRule } from '../../src/prose/trouble-links.ts';
import { withPairs } from '../../src/units/late/pairs.ts';
import { askContent } from '../widgets/ask/site-words.ts';

interface Trouble {
  readonly id: string;
  readonly data: {
    readonly title: string;
    readonly says: string;
    readonly kind?: 'sliding' | 'lift-off' | 'sawn';
    readonly checks: readonly string[];
    readonly results: readonly string[];
    readonly silent?: string;
    readonly causes: readonly {
      readonly cause: string;
      readonly tell: string;
      readonly cure: string;
      readonly rule: { readonly id: string };
    }[];
    readonly never: readonly string[];
    readonly rules: readonly { readonly id: string }[];
    readonly lesson?: { readonly id: string };
    readonly figure?: string;
    readonly cautions: readonly RuleCaution[];
  };
}
const troubles = askContent.troubles as unknown as readonly Trouble[];
const lessons = askContent.lessons as unknown as readonly {
  readonly id: string;
  readonly data: { readonly rules: readonly string[] };
}[];
const content = new URL('../../content/', import.meta.url);

describe.each(troubles)('$id', ({ id, data }) => {
  const { checks, results, silent, causes, never, lesson, cautions } = data;

  test('names checks and results of the model, and has a number or says why there is none', () => {
    const known = wholeModel.checks.map((check) => check.id);
    for (const check of checks) expect(known).toContain(check);
    for (const result of results) expect(Object.keys(wholeModel.results)).toContain(result);
    expect(checks.length + results.length > 0).toBe(silent === undefined);
  });

  test('has for each cause a check of its own that tells it apart, and a cure', () => {
    expect(causes.length).toBeGreaterThan(1);
    for (const field of ['cause', 'tell', 'cure'] as const)
      expect(new Set(causes.map((one) => one[field])).size).toBe(causes.length);
    expect(never.length).toBeGreaterThan(0);
  });

  test('is listed by each rule and by the lesson it leads to', () => {
    for (const rule of rulesBehind(data))
      expect(troublesOfRule(troubles, rule).map((one) => one.id)).toContain(id);
    if (lesson) expect(troublesOfLesson(troubles, lesson.id, []).map((one) => one.id)).toContain(id);
  });

  test('is drawn by a rule that has a figure and is behind it', () => {
    expect(Object.keys(ruleFigures)).toContain(data.figure);
    expect(rulesBehind(data)).toContain(data.figure);
  });

  test('gives every length to both readers', () => {
    const texts = [
      data.says,
      ...never,
      ...textsOf(cautions),
      ...causes.flatMap(({ cause, tell, cure }) => [cause, tell, cure]),
    ];
    for (const text of texts)
      for (const piece of withPairs(text))
        if (typeof piece === 'string') expect(piece).not.toMatch(/\d\s?(mm|cm|in|ft|°C|°F|kg|lb)\b/);
  });

  test('has words of its own beside its list of causes', () => {
    const text = readFileSync(new URL(`troubles/${id}.mdx`, content), 'utf8').split(/^---$/m)[2]!;
    expect(text.trim().split(/\s+/).length).toBeGreaterThan(15);
  });
});

test('every trouble of a box that has it shows a number of that box', () => {
  const silent = troubles.filter(({ data: { kind = 'sliding', checks, results, silent: why } }) => {
    const values = evaluate({ ...exampleBox, kind, rock: 0.5, diagonalsApart: 1 });
    const judged = verdicts(values).some(
      ({ check, state }) => checks.includes(check.id) && state !== 'unknown',
    );
    const computed = results.some((name) => Number.isFinite(values[name as keyof typeof values]));
    return why === undefined && !judged && !computed;
  });
  expect(silent.map(({ id }) => id)).toEqual([]);
});

test('there are troubles of every part that can be pointed at', () => {
  expect(troubles.length).toBe(readdirSync(new URL('troubles/', content)).length);
  expect(troubles.length).toBeGreaterThanOrEqual(28);
});

test('a rule lists first the troubles that it is the likeliest cause of', () => {
  const of = troublesOfRule(troubles, 'lid-clearance').map(({ id }) => id);
  // The lid sticks: play beside it comes first. The lid slips out: the depth of its groove does.
  expect(of.indexOf('lid-jams')).toBeLessThan(of.indexOf('lid-slips-out'));
});

test('a lesson lists the troubles whose likeliest cause it teaches, though they do not name it', () => {
  const movement = lessons.find(({ id }) => id === 'wood-movement')!;
  const found = troublesOfLesson(troubles, movement.id, movement.data.rules).map(({ id }) => id);
  // Taught by gap-beside-the-bottom and lid-clearance, which are rules of that lesson.
  expect(found).toEqual(expect.arrayContaining(['lid-jams', 'corner-pushed-open', 'bottom-cups']));
});
