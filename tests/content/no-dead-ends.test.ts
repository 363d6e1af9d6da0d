/** From everything a way leads on: lessons to rules and back, words, cautions and sources to where they are used. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cautionNames, cautions } from '../../src/box/work/cautions.ts';
import { relations } from '../../src/calc/index.ts';
import { cautionsOf, namedIn } from '../../src/prose/cautions.ts';
import { lessonText, placesOf, ruleText } from '../../src/prose/words/places.ts';
import { cautionsOfWork } from './cautions-of-work.ts';
import { citedIn, glossary, lessons, rules, sourceIds, tableOf } from './content.ts';

/** Rules that no lesson teaches yet, each with why. A lesson that takes one up takes it off this list. */
const withoutLesson: Readonly<Record<string, string>> = {};

describe('lessons and rules', () => {
  test.each(lessons)('the lesson $id names its rules', ({ data }) => {
    expect(data.rules.length).toBeGreaterThan(0);
    for (const id of data.rules) expect(rules.map((rule) => rule.id)).toContain(id);
  });

  test.each(rules)('the rule $id names its lesson, or is listed with why it has none', ({ id, data }) => {
    if (data.lesson === undefined) expect(Object.keys(withoutLesson), `${id} has no lesson`).toContain(id);
    else expect(withoutLesson[id], `${id} has a lesson now: take it off the list`).toBeUndefined();
  });
});

describe('words', () => {
  const words = Object.entries(glossary);
  const asWords = Object.fromEntries(words);
  const texts = lessons.map(({ id, body, data }) =>
    lessonText({
      id,
      body,
      data: {
        ...data,
        steps: data.steps.map(({ ask, words = [] }) => ({
          ask,
          words: Array.isArray(words) ? words.map((word: string) => ({ id: word })) : [],
        })),
      },
    }),
  );
  const places = placesOf(asWords, texts, rules.map(ruleText));

  test.each(words)(
    '%s leads to a lesson, a rule or another word, all of which exist',
    (id, { rule, see = [] }) => {
      const { lessons: inLessons, rules: inRules } = places[id]!;
      expect(inLessons.length + inRules.length + see.length + (rule ? 1 : 0)).toBeGreaterThan(0);
      if (rule) expect(rules.map((one) => one.id)).toContain(rule);
      for (const other of see) expect(Object.keys(glossary)).toContain(other);
      expect(see).not.toContain(id);
    },
  );

  test('are used: three in four of them in a lesson or rule, the others are those of the bench', () => {
    const used = words.filter(([id]) => places[id]!.lessons.length + places[id]!.rules.length > 0);
    expect(used.length / words.length).toBeGreaterThan(0.6);
  });
});

test.each(cautionNames)('the caution %s stands at a step of the work, in a rule or in a lesson', (name) => {
  const inRules = rules.filter(({ data }) => cautionsOf(data.cautions ?? []).named.includes(name));
  const inLessons = lessons.filter(({ body }) => namedIn(body).includes(name));
  expect(inRules.length + inLessons.length + (cautionsOfWork.has(name) ? 1 : 0)).toBeGreaterThan(0);
});

/** Works that nothing cites: read, and kept as background, which their entry says on the page. */
const background: Readonly<Record<string, string>> = {
  'ansi-o1-1': 'what machines must have, beside the rules that are cited',
  'astm-e29': 'rounding',
  'glass-2014': 'a judgment on old tables of moisture',
  'graham-knuth-patashnik': 'the search for whole ratios',
  'international-inch-1959': 'the inch',
  'iso-128': 'how drawings are drawn',
  'iso-129-1': 'how dimensions are written',
  'iso-2768-1': 'tolerances, for comparison',
  'iso-80000-1': 'rounding',
  'simpson-1971': 'the first form of the moisture equation',
};

const physics = ['heard', 'open'].flatMap((name) =>
  Object.values(tableOf<{ sources?: readonly string[] }>(`physics/${name}.yaml`)),
);
/** A source whose tables are in content/data says which. */
const ofTables = (id: string) => tableOf<unknown>(`sources/${id}.yaml`).keys !== undefined;

test('each source is cited by a rule, a lesson, a formula, a table, a caution or the notebook, or is background', () => {
  const cited = new Set([
    ...rules.flatMap(({ data, body }) => [...(data.sources ?? []), ...citedIn(body)]),
    ...lessons.flatMap(({ data, body }) => [
      ...data.steps.flatMap(({ from = [] }) => from.map(({ source }) => source)),
      ...citedIn(body),
    ]),
    ...[...relations.values()].map(({ source }) => source),
    ...Object.values(cautions).flatMap(({ sources }) => sources),
    ...physics.flatMap(({ sources = [] }) => sources),
    ...sourceIds.filter((id) => ofTables(id)),
    ...citedIn(readFileSync(new URL('../../src/pages/notebook/index.astro', import.meta.url), 'utf8')),
  ]);
  expect(sourceIds.filter((id) => !cited.has(id))).toEqual(Object.keys(background));
});
