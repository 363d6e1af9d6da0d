/** What the guesses of the lesson on where a groove shows hold for true, against sums by hand. */
import { describe, expect, test } from 'vitest';
import { holeOf } from '../../../src/figures/grooves/FrontPick.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['where-the-groove-shows']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

describe('the guesses on where a groove shows', () => {
  // 10 − 4 mm; 3/8 − 5/32 is 7/32 in.
  test('the groove stops a wall less its depth from the end', () => {
    expect(truth('groove-stop', 'mm')).toBeCloseTo(6, 9);
    expect(truth('groove-stop', 'inch')).toBeCloseTo((7 / 32) * 25.4, 9);
  });

  // Half the chord: the root of 125² − 121² is that of 984; of 5² − (5 − 5/32)² in it is that of 1.5381.
  test('the blade has run on for more than the whole thickness of the neighbor', () => {
    expect(truth('saw-arc', 'mm')).toBeCloseTo(31.369, 3);
    expect(truth('saw-arc', 'inch')).toBeCloseTo(Math.sqrt(1.5381) * 25.4, 2);
    expect(truth('saw-arc', 'mm') as number).toBeGreaterThan(valuesOf('saw-arc', 'mm').wall);
  });

  // The sides have fingers 1, 3 and 5 from below, the front 2 and 4: 3.6 lies in the front's fourth, 0.4 of it is left.
  test('only a front that ends inside its own finger leaves a hole, the rest of that finger', () => {
    const values = valuesOf('front-hole', 'mm');
    expect(holeOf(values, 'own')).toBeCloseTo(0.4 * 9, 9);
    expect(holeOf(values, 'whole')).toBe(0);
    expect(holeOf(values, 'side')).toBe(0);
    for (const system of ['mm', 'inch'] as const) expect(truth('front-hole', system)).toBe('own');
  });
});
