/** What the guesses of the lesson on surfaces hold for true, by hand. */
import { describe, expect, test } from 'vitest';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['flat-smooth-and-kind']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

describe('the guesses on surfaces', () => {
  test('a rock of 0.4 mm, or 1/64 in, costs the third corner half of that', () => {
    expect(truth('rim-on-the-plate', 'mm')).toBeCloseTo(0.2, 9);
    expect(truth('rim-on-the-plate', 'inch')).toBeCloseTo(25.4 / 128, 9);
  });

  test('from 80 to 220 is a step of 2.75, so deep scratches are left', () => {
    for (const system of ['mm', 'inch'] as const) expect(truth('fine-after-coarse', system)).toBe('deep');
  });

  // Common practice: three coats on a tongue take 0.15 to 0.2 mm; 2 · 3 · 0.03 mm.
  test('three coats on both faces take 0.18 mm of a play of 0.3 mm', () => {
    expect(truth('film-in-the-fit', 'mm')).toBeCloseTo(0.18, 9);
    expect(valuesOf('film-in-the-fit', 'mm').tongueSlipCoated).toBeCloseTo(0.12, 9);
    expect(Math.floor(valuesOf('film-in-the-fit', 'mm').coatsOnTongue)).toBe(1);
  });

  test('three coats take six faces, three times, a tenth of a millimeter deep', () => {
    for (const system of ['mm', 'inch'] as const) {
      const { outsideLength: L, outsideWidth: b, outsideHeight: H } = valuesOf('finish-in-a-glass', system);
      expect(truth('finish-in-a-glass', system)).toBeCloseTo((L * b + L * H + b * H) * 0.6, 6);
    }
  });
});
