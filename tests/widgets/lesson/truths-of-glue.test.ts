/** What the guesses of the lesson on gluing up hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['glue-up-without-surprises']!;
const valuesOf = (id: string, system: 'mm' | 'inch', moved = {}) =>
  valuesOfGuess(guesses![id]!, model, system, moved);
const truth = (id: string, system: 'mm' | 'inch', moved = {}) =>
  guesses![id]!.truth(valuesOf(id, system, moved), system);

describe('the guesses on gluing up', () => {
  // Fifteen fingers, 14 faces a corner, 56 in all, 8 s each: 448 s; ten steps of 20 s: 200 s.
  test.each(['mm', 'inch'] as const)('56 faces and ten steps take 10.8 minutes (%s)', (system) => {
    expect(truth('last-clamp', system)).toBeCloseTo(10.8, 9);
  });

  // 90 mm in fingers of 15: 6 fingers, 5 faces a corner, 20 in all: 160 s and 200 s.
  test('wider fingers bring it within the open time', () => {
    expect(truth('last-clamp', 'mm', { fingerWidth: 15 })).toBeCloseTo(6, 9);
  });

  // 6 cheeks of 8 × 8 and 56 × 8 of slot bottoms: 832 mm² a corner, 3328 in all; 200 g/m² at 1100 kg/m³ is 2/11 mm.
  test('the glue of four corners is a cube of 8.46 mm', () => {
    expect(truth('glue-cube', 'mm')).toBeCloseTo(Math.cbrt((3328 * 2) / 11), 9);
    expect(truth('glue-cube', 'mm')).toBeCloseTo(8.46, 2);
  });

  // 90 × 10 × √2 is 1272.8 mm², and cherry begins at 1.03 MPa (150 lbf/in²).
  test('a miter of 90 by 10 mm asks for 1.3 kN, one of 3 1/2 by 3/8 in for 277 pounds', () => {
    expect(truth('miter-force', 'mm')).toBeCloseTo(1311, 0);
    expect(Number(truth('miter-force', 'inch')) / 4.44822).toBeCloseTo(277.3, 0);
  });

  test('what is leveled the next day lies sunken', () => {
    for (const system of ['mm', 'inch'] as const) expect(truth('leveled-next-day', system)).toBe('sunken');
  });
});
