/** The scratch cell at the end of each lesson begins with a sum that works, of a relation that the lesson teaches. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../src/box/subjects/example.ts';
import { relationNamed } from '../../src/notebook/scratch/names.ts';
import { workAll } from '../notebook/scratch/core.ts';
import { lessons, rules } from './content.ts';

const sums = lessons.map(({ id, data }) => ({ lesson: id, ...data }));

test('each lesson has one of its own', () => {
  expect(new Set(sums.map(({ scratch }) => scratch)).size).toBe(lessons.length);
});

describe.each(sums)('$lesson: $scratch', ({ scratch, rules: taught }) => {
  test.each(['mm', 'inch'] as const)('comes to a number for the example in %s', (system) => {
    expect(workAll([{ type: 'sum', text: scratch }], exampleFor(system))).toMatchObject([{ type: 'value' }]);
  });

  test('calls a relation of a rule of its lesson, with names of the reader’s box', () => {
    const called = [...scratch.matchAll(/(\w+)\(/g)].map(([, name]) => relationNamed(name!)?.id);
    const of = rules.filter(({ id }) => taught.includes(id)).flatMap(({ data }) => data.relations ?? []);
    expect(called).not.toHaveLength(0);
    for (const id of called) expect(of).toContain(id);
    expect(scratch).toContain('box.');
  });
});
