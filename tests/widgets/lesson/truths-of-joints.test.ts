/** What the guesses of the lesson on joint spacing hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/figures/joints/AreaPick.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['joint-spacing']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

describe('the guesses on finger joints', () => {
  // 48 − 5 · 9 = 3 mm; 2 − 5 · 3/8 = 1/8 in.
  test('five fingers of 9 mm leave 3 mm of 48, and five of 3/8 in leave 1/8 of 2', () => {
    expect(truth('left-at-edge', 'mm')).toBeCloseTo(3, 9);
    expect(truth('left-at-edge', 'inch')).toBeCloseTo(25.4 / 8, 9);
  });

  // 3 · 0.03 is still within 0.1 mm, 4 · 0.03 is not; 4 · 0.001 just fills 0.004 in, 5 · 0.001 does not go in.
  // Fingers count from the edge, two to a step: 8 and 10.
  test('the first finger to bind is the one behind the first step that uses up the play', () => {
    expect(truth('binding-finger', 'mm')).toBe(8);
    expect(truth('binding-finger', 'inch')).toBe(10);
  });

  // 70 mm high and 10 thick: 7 fingers touch on 6 faces of 1 cm², 14 on 13; the miter is 7 · 1 · √2 cm².
  test('fingers as wide as the wall have less area than a miter, and fingers half as wide have more', () => {
    const values = valuesOf('least-area', 'mm');
    expect(areaOf(values, 'wide')).toBeCloseTo(600, 6);
    expect(areaOf(values, 'narrow')).toBeCloseTo(1300, 6);
    expect(areaOf(values, 'miter')).toBeCloseTo(989.95, 1);
    for (const system of ['mm', 'inch'] as const) expect(truth('least-area', system)).toBe('wide');
  });
});
