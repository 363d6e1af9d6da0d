/** Ends out of square and unequal walls: against plain triangles, and against a trapezium that is drawn. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endStep, leanOfUnequalWalls, lengthsApart } from '../../../src/calc/square/ends.ts';

test('an end of 100 mm out of square by 0.1° has a step of 0.175 mm', () => {
  // Tangents from a table: tan 0.1° = 0.0017453, tan 0.25° = 0.0043634.
  expect(endStep.compute({ w: 100, e: 0.1 })).toBeCloseTo(0.1745, 3);
  expect(endStep.compute({ w: 100, e: 0.25 })).toBeCloseTo(0.4363, 3);
});

test('no two parts differ by more than what one error either way allows', () => {
  const error = fc.double({ min: -0.3, max: 0.3, noNaN: true });
  fc.assert(
    fc.property(error, error, (one, other) => {
      expect(Math.abs(one - other)).toBeLessThanOrEqual(lengthsApart.compute({ e: 0.3 }) + 1e-12);
    }),
  );
});

describe('walls of unequal length, diagonals clamped equal', () => {
  test.each([
    [200, 120, 0.5],
    [250, 150, 1],
    [90, 60, 0.2],
  ])('%f and as much less %3$f, with ends of %f mm, lean the ends as in the drawn trapezium', (a, b, d) => {
    const lean = (leanOfUnequalWalls.compute({ d, b }) * Math.PI) / 180;
    // Corners of a trapezium that is alike left and right: the long wall below, both ends leaning in.
    const rise = b * Math.cos(lean);
    const [left, right] = [b * Math.sin(lean), a - b * Math.sin(lean)];
    expect(right - left).toBeCloseTo(a - d, 9);
    expect(Math.hypot(right, rise)).toBeCloseTo(Math.hypot(a - left, rise), 9);
  });
});
