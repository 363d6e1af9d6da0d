/**
 * Rules and lessons as data: every worked example printed on a rule's page is run here, and every reference
 * from one file to another must resolve (the site's build only logs a dangling one).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { wholeModel } from '../../src/box/whole/index.ts';

import { outsideRange } from '../../src/calc/core/working.ts';
import { relations } from '../../src/calc/index.ts';
import { lessonStages } from '../../src/prose/lesson-terms.ts';

const { checks } = wholeModel;

interface Example {
  says: string;
  relation: string;
  given: Record<string, number>;
  expect: number;
  within: number;
  source: string;
}
interface Rule {
  title: string;
  relations?: string[];
  sources?: string[];
  lesson?: string;
  examples: Example[];
}
interface Lesson {
  title: string;
  order: number;
  stage: string;
  rules: string[];
  recall: { ask: string; options: string[]; right: number }[];
}

const root = new URL('../../content/', import.meta.url);
const slugs = (folder: string, ending: string) =>
  readdirSync(new URL(folder, root))
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length));
const text = (file: string) => readFileSync(new URL(file, root), 'utf8');
const frontmatter = <Data>(file: string) => parse(text(file).split('---\n')[1] ?? '') as Data;

const sources = new Set(slugs('sources/', '.yaml'));
const rules = new Map(slugs('rules/', '.mdx').map((slug) => [slug, frontmatter<Rule>(`rules/${slug}.mdx`)]));
const lessons = new Map(
  slugs('lessons/', '.mdx').map((slug) => [slug, frontmatter<Lesson>(`lessons/${slug}.mdx`)]),
);

describe.each([...rules])('the rule %s', (slug, rule) => {
  test('has worked examples that come out as printed', () => {
    expect(rule.examples.length).toBeGreaterThan(0);
    for (const example of rule.examples) {
      const relation = relations.get(example.relation);
      expect(relation, `${example.relation} is not a relation`).toBeDefined();
      expect(Object.keys(example.given).sort()).toEqual(Object.keys(relation!.inputs).sort());
      expect(outsideRange(relation!, example.given), `${example.says} is outside the range`).toBeUndefined();
      expect(Math.abs(relation!.compute(example.given) - example.expect), example.says).toBeLessThanOrEqual(
        example.within,
      );
      // A tenth of the value, or a thousandth where the value is next to nothing: a wider tolerance shows nothing.
      expect(example.within, `${example.says} allows too much`).toBeLessThanOrEqual(
        Math.max(Math.abs(example.expect) / 10, 0.001),
      );
    }
  });

  test('points only to relations, sources and lessons that exist', () => {
    for (const id of rule.relations ?? []) expect(relations.has(id), id).toBe(true);
    for (const id of rule.sources ?? []) expect(sources.has(id), id).toBe(true);
    if (rule.lesson) expect(lessons.get(rule.lesson)?.rules, rule.lesson).toContain(slug);
  });
});

describe.each([...lessons])('the lesson %s', (slug, lesson) => {
  test('teaches rules that exist and name it as their lesson', () => {
    for (const id of lesson.rules) expect(rules.get(id)?.lesson, id).toBe(slug);
  });

  test('asks questions with one right option among different ones', () => {
    for (const question of lesson.recall) {
      expect(question.right).toBeLessThan(question.options.length);
      expect(new Set(question.options).size).toBe(question.options.length);
    }
  });

  test('cites works that are in content/sources', () => {
    for (const [, id] of text(`lessons/${slug}.mdx`).matchAll(/<Cite source="([^"]*)"/g))
      expect(sources.has(id!), id).toBe(true);
  });

  test('keeps to 700 to 1,400 words', () => {
    const prose = text(`lessons/${slug}.mdx`)
      .split('---\n')
      .slice(2)
      .join(' ')
      .replace(/<[^>]*>/g, ' ');
    const words = prose.split(/\s+/).filter((word) => /\p{L}|\d/u.test(word)).length;
    expect(words).toBeGreaterThanOrEqual(700);
    expect(words).toBeLessThanOrEqual(1400);
  });
});

test('lessons are counted from 1, and those of a stage follow one another in the order of the stages', () => {
  const inOrder = [...lessons.values()].sort((one, other) => one.order - other.order);
  expect(inOrder.map(({ order }) => order)).toEqual(inOrder.map((_, index) => index + 1));
  const places = inOrder.map(({ stage }) => Object.keys(lessonStages).indexOf(stage));
  expect(places).toEqual([...places].sort((one, other) => one - other));
});

test('every check of a box and every result points to a rule that exists', () => {
  for (const check of checks) expect(rules.has(check.rule), check.rule).toBe(true);
  for (const result of Object.values(wholeModel.results))
    if (result.rule) expect(rules.has(result.rule), result.rule).toBe(true);
});

test('the five core lessons teach at least 16 rules', () => {
  const core = ['proportion', 'wall-thickness', 'groove-margins', 'wood-movement', 'joint-spacing'];
  const taught = core.flatMap((slug) => lessons.get(slug)?.rules ?? []);
  expect(new Set(taught).size).toBeGreaterThanOrEqual(16);
});
