/** What the form of the sheets takes, and what it asks for first. */
import { expect, test } from 'vitest';
import { blockOf, checked } from '../../../src/widgets/exercises/sheets/form.ts';

const choices = { className: '7b', system: 'mm', paper: 'A4', print: 'both', exercises: ['e1'] } as const;

test('a class, 1 to 60 learners and an exercise are wanted, and each is asked for in words', () => {
  expect(checked(choices, ' 30 ')).toEqual({ ...choices, learners: 30 });
  expect(checked({ ...choices, className: '  Class   7b ' }, '1')).toMatchObject({ className: 'Class 7b' });
  expect(checked({ ...choices, className: ' ' }, '30')).toEqual({
    missing: expect.stringContaining('class'),
  });
  for (const learners of ['', '0', '61', '-3', '2.5', 'thirty'])
    expect(checked(choices, learners)).toEqual({ missing: expect.stringContaining('1 to 60') });
  expect(checked({ ...choices, exercises: [] }, '30')).toEqual({
    missing: expect.stringContaining('exercise'),
  });
});

test('a block is shown as chosen only where its exercises are, and no other', () => {
  const blocks = [
    { id: 'one', title: '1', exercises: ['e1', 'e2'] },
    { id: 'two', title: '2', exercises: ['e2'] },
  ];
  expect(blockOf(blocks, ['e2', 'e1'])).toBe('one');
  expect(blockOf(blocks, ['e2'])).toBe('two');
  expect(blockOf(blocks, ['e1'])).toBe('');
});
