/** Exercises and the course: every lesson has one, every exercise a lesson, and every block of a class names its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { exercises } from '../../src/exercises/index.ts';

const content = new URL('../../content/', import.meta.url);
const lessons = readdirSync(new URL('lessons/', content)).map((name) => name.replace(/\.mdx$/, ''));
const blocks = readdirSync(new URL('class/blocks/', content)).map(
  (name) =>
    parse(readFileSync(new URL(`class/blocks/${name}`, content), 'utf8')) as { readonly lessons: string[] },
);

test.each(lessons)('%s has an exercise with numbers of the learner’s own', (lesson) => {
  expect(exercises.filter((one) => one.lesson === lesson).length).toBeGreaterThan(0);
});

test.each(exercises.map(({ id, lesson }) => [id, lesson] as const))('%s belongs to %s', (_, lesson) => {
  expect(lessons).toContain(lesson);
});

test.each(lessons)('%s leads to its exercises from its new numbers', (lesson) => {
  expect(readFileSync(new URL(`lessons/${lesson}.mdx`, content), 'utf8')).toContain('<NewNumbers ');
});

test('every block of the course has exercises, and together they have all', () => {
  const named = blocks.map((block) => exercises.filter(({ lesson }) => block.lessons.includes(lesson)));
  for (const some of named) expect(some.length).toBeGreaterThan(0);
  expect(new Set(named.flat()).size).toBe(exercises.length);
});

test('no two exercises have one name', () => {
  expect(new Set(exercises.map(({ title }) => title)).size).toBe(exercises.length);
});
