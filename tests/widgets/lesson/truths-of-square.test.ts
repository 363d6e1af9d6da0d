/** What the guesses of the lesson on squareness hold for true, against drawn corners and arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { leanOf } from '../../../src/figures/square/EqualPick.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['is-it-square']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

/** By how much the diagonals of a box differ whose far end was pushed aside, from its drawn corners. */
const diagonalsApart = (a: number, b: number, aside: number) => {
  const down = Math.sqrt(b * b - aside * aside);
  return Math.hypot(a + aside, down) - Math.hypot(a - aside, down);
};

describe('the guesses on squareness', () => {
  test('pushed aside by the answer, the drawn corners have the diagonals that were told', () => {
    const [mm, inch] = [truth('far-end-aside', 'mm') as number, truth('far-end-aside', 'inch') as number];
    expect(diagonalsApart(200, 120, mm)).toBeCloseTo(1, 6);
    expect(diagonalsApart(203.2, 120.65, inch)).toBeCloseTo(25.4 / 32, 6);
  });

  // 1 mm over twice 120 mm is 0.004167, the sine of 0.2387°; equal walls have nothing to share.
  test('only unequal walls lean between equal diagonals, by half their difference at each end', () => {
    const values = valuesOf('equal-and-not-square', 'mm');
    expect(leanOf(values, 'one')).toBeCloseTo(0.2387, 4);
    expect(leanOf(values, 'leaning')).toBe(0);
    expect(leanOf(values, 'both')).toBe(0);
    for (const system of ['mm', 'inch'] as const) expect(truth('equal-and-not-square', system)).toBe('one');
  });

  // Sticks of 300 mm over a box of 120 are 2.5 times as long: 2.5 · 0.4 mm. 12 in over 4 3/4 in, times 1/64 in.
  test('winding sticks show the rock by as much larger as they are longer than the box is wide', () => {
    expect(truth('winding-sticks', 'mm')).toBeCloseTo(1, 9);
    expect(truth('winding-sticks', 'inch')).toBeCloseTo((12 / 4.75) * (25.4 / 64), 9);
  });
});
