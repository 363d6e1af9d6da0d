/** What the guesses of the lesson on wall thickness hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['wall-thickness']!;
const truth = (id: string, system: 'mm' | 'inch' = 'mm') => {
  const spec = guesses![id]!;
  return spec.truth(valuesOfGuess(spec, model, system), system);
};

describe('the guesses on walls', () => {
  // 180 × 120 × 60 mm outside and walls of 19 mm leave 142 × 82 mm. In the height the bottom's lip and tongue take
  // 9 + 4 mm, the lid and the lip above it 4.5 + 3.5 mm: 39 mm are left. 1 − 142 · 82 · 39 / (180 · 120 · 60) = 0.650.
  test('walls of 19 mm take 65 % of a box of the size of a thick paperback', () => {
    expect(truth('poured-inside')).toBeCloseTo(65, 0);
  });

  // Cherry, bending test 10.3 GPa (Wood Handbook, Table 5-3a), a tenth more along the grain: 11 330 MPa.
  // P L³ / (4 E H t³) = 50 · 184³ / (4 · 11 330 · 60 · 4³) = 1.79 mm.
  test('a side of cherry 4 mm thick and 184 mm long gives 1.79 mm under 50 N, its ends free', () => {
    expect(truth('thin-side')).toBeCloseTo(1.79, 2);
  });
});
