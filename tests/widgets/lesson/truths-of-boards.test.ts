/** What the guesses of the lessons on boards hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const truth = (lesson: string, id: string, system: 'mm' | 'inch') => {
  const { guesses, model } = lessons[lesson]!;
  const guess = guesses![id]!;
  return guess.truth(valuesOfGuess(guess, model, system), system);
};

describe('the guesses on boards', () => {
  // 2 · 8 + 4 · 1 + 3 = 23 mm; in 32nds of an inch 20 + 4 + 4 = 28, which is 7/8.
  test('two walls of 8 mm come from 23 mm, two of 5/16 in from 7/8', () => {
    expect(truth('thickness-from-thickness', 'board-for-two', 'mm')).toBeCloseTo(23, 9);
    expect(Number(truth('thickness-from-thickness', 'board-for-two', 'inch')) / 25.4).toBeCloseTo(7 / 8, 9);
  });

  // What dries more shrinks more, and the shorter face is the hollow one.
  test('fresh faces go hollow', () => {
    for (const system of ['mm', 'inch'] as const)
      expect(truth('thickness-from-thickness', 'fresh-faces', system)).toBe('lens');
  });

  // Front next to right, right next to back, back next to left: three pairs, counted on the strip.
  test('walk-round order matches most corners', () => {
    expect(truth('grain-round-the-corner', 'order-on-strip', 'mm')).toBe('walk');
  });

  // 2 · (172 + 112) + 3 · 3 = 577, times 0.034921, the tangent of 2°.
  test('a line that climbs 2° ends 20.1 mm above its beginning', () => {
    expect(truth('grain-round-the-corner', 'fourth-corner', 'mm')).toBeCloseTo(20.149, 2);
  });
});
