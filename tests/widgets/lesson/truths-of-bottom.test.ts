/** What the guesses of the lesson on the bottom hold for true, against figures reckoned apart from the program. */
import { describe, expect, test } from 'vitest';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['the-bottom-you-can-hear']!;
const truth = (id: string, system: 'mm' | 'inch' = 'mm') => {
  const spec = guesses![id]!;
  return spec.truth(valuesOfGuess(spec, model, system), system);
};

describe('the guesses on the bottom', () => {
  test.each(['mm', 'inch'] as const)('a bottom twice as thick sags an eighth (%s)', (system) => {
    expect(truth('doubled-sag', system)).toBeCloseTo(12.5, 9);
  });

  // Plates: the lowest note goes with the thickness (Leissa, Vibration of Plates, 1969).
  test.each(['mm', 'inch'] as const)('a bottom twice as thick sounds higher (%s)', (system) => {
    expect(truth('thicker-note', system)).toBe('higher');
  });

  // Walnut 200 by 120 by 6 mm, loss factor 0.02: 2.2 / (0.02 · 475) s.
  test('6 mm of walnut ring 0.23 s', () => {
    expect(truth('doubled-ring')).toBeCloseTo(0.23, 2);
  });

  // −13 dB of speed for a push of 2 ms, from a separate calculation, to the decibel; and half of it, since it swings
  // twice as often.
  test('a soft knuckle swings 6 mm about an eighth as far as 3 mm', () => {
    expect(Math.abs(20 * Math.log10((truth('doubled-swing') as number) / 100) + 19)).toBeLessThan(0.6);
  });
});
