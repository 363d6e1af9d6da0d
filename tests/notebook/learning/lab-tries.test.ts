/** The log of tries: what changed between two, and the nudge. */
import { expect, test } from 'vitest';
import { changedBetween, type LabTry, nudgeOf, readTries } from '../../../src/notebook/learning/lab-tries.ts';

const at = (wall: string, lid: string): LabTry => ({
  set: [
    { name: 'wall', shown: wall, value: wall, main: true },
    { name: 'lid', shown: lid, value: lid, main: true },
  ],
  got: [],
});

test('one thing changed gets no nudge; two are named, with what to do', () => {
  expect(nudgeOf(changedBetween(at('8', '6'), at('9', '6')))).toBe('');
  expect(nudgeOf(changedBetween(at('8', '6'), at('9', '7')))).toBe(
    'Two things changed at once: wall and lid. Change one to see what it does.',
  );
});

test('what claims to be tries and is none is dropped', () => {
  expect(readTries(JSON.stringify([at('8', '6'), { set: 1 }, null]))).toEqual([at('8', '6')]);
  expect(readTries('{')).toEqual([]);
});
