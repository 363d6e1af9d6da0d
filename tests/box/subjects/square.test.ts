/** What the box says of errors and of its own measurements. */
import { describe, expect, test } from 'vitest';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { INCH } from '../../../src/units/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const values = (changes: Partial<Box> = {}) => evaluate({ ...exampleBox, ...changes });
const stateOf = (id: string, changes: Partial<Box>) =>
  verdicts(values(changes)).find(({ check }) => check.id === id)?.state;

describe('numbers', () => {
  test('the example, 181 by 106 mm inside, is 0.21° off square with diagonals 0.7 mm apart', () => {
    // By the short way: 0.7 × 209.8 / (2 × 181 × 106) = 0.003827 rad = 0.2193°; 106 times that is 0.406 mm.
    const v = values({ diagonalsApart: 0.7 });
    expect([v.insideLength, v.insideWidth]).toEqual([181, 106]);
    expect(v.angleOffSquare).toBeCloseTo(0.2193, 3);
    expect(v.endShift).toBeCloseTo(0.4056, 3);
  });

  test('a rock of 0.3 mm leaves 0.15 mm under a flat lid', () => {
    expect(values({ rock: 0.3 }).lidGapOfTwist).toBeCloseTo(0.15, 12);
  });

  test('two walls cut to their own marks differ by at most twice the error of one', () => {
    expect(values({ lengthError: 0.15 }).wallsApart).toBeCloseTo(0.3, 12);
  });

  test('diagonals farther apart than the box allows give no number', () => {
    const small: Partial<Box> = { sizeFrom: 'inside', wantedLength: 60, wantedWidth: 19, diagonalsApart: 10 };
    expect(values(small).angleOffSquare).toBeNaN();
  });
});

describe('verdicts', () => {
  test.each([
    ['0.4 mm', 0.4, 'usual'],
    ['1/64 in', INCH / 64, 'usual'],
    ['0.5 mm', 0.5, 'usual'],
    ['0.8 mm', 0.8, 'unusual'],
    ['1 mm', 1, 'unusual'],
    ['1.2 mm', 1.2, 'breaks'],
  ])('diagonals %s apart are judged', (_, diagonalsApart, state) => {
    expect(stateOf('diagonals', { diagonalsApart })).toBe(state);
  });

  test('a box that has not been measured is not judged', () => {
    expect(stateOf('diagonals', {})).toBeUndefined();
    expect(stateOf('twist', {})).toBeUndefined();
  });

  test('a rock of two sheets of paper is the limit', () => {
    expect(stateOf('twist', { rock: 0.2 })).toBe('usual');
    expect(stateOf('twist', { rock: 0.25 })).toBe('unusual');
  });

  test('an error of 0.05 mm needs no stop, one of 0.1 mm does', () => {
    expect(stateOf('opposite-walls-from-one-stop', { lengthError: 0.05 })).toBe('usual');
    expect(stateOf('opposite-walls-from-one-stop', { lengthError: 0.1 })).toBe('unusual');
  });
});
