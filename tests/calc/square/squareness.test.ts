/** Errors of angle and length: against the published arithmetic of miters, and against plain triangles. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleFromDiagonals,
  diagonalDifference,
  endStep,
  mitreGapAdded,
  mitreGapRandom,
} from '../../../src/calc/square/squareness.ts';

describe('the gap at the last corner of a mitered box', () => {
  // By hand: 10 √2 sin 0.8° = 14.142 × 0.013962 = 0.1975, and so on.
  test.each([
    [10, 0.05, 0.0987],
    [10, 0.1, 0.1975],
    [10, 0.25, 0.4936],
    [6, 0.5, 0.5919],
    [12, 0.25, 0.5923],
  ])('for %f mm walls and %f° a cut is about %f mm', (t, e, expected) => {
    expect(mitreGapAdded.compute({ t, e })).toBeCloseTo(expected, 3);
  });

  test('is about a third when each cut errs its own way: √8 instead of 8', () => {
    // Small angles: √8 / 8 = 0.354.
    expect(mitreGapRandom.compute({ t: 10, e: 0.1 }) / mitreGapAdded.compute({ t: 10, e: 0.1 })).toBeCloseTo(
      0.3536,
      3,
    );
  });
});

describe('an end out of square', () => {
  // Tangents from a table: tan 0.1° = 0.0017453, tan 0.25° = 0.0043634.
  test('of 100 mm by 0.1° has a step of 0.175 mm', () => {
    expect(endStep.compute({ w: 100, e: 0.1 })).toBeCloseTo(0.1745, 3);
    expect(endStep.compute({ w: 100, e: 0.25 })).toBeCloseTo(0.4363, 3);
  });
});

describe('the diagonals of a racked box', () => {
  test.each([
    [200, 120, 0.25],
    [200, 120, 1],
    [150, 150, 0.27],
    [400, 200, 0.16],
  ])('of %f by %f racked by %f° differ as the corners of the drawn parallelogram do', (a, b, e) => {
    const lean = (e * Math.PI) / 180;
    const corner = [a + b * Math.sin(lean), b * Math.cos(lean)] as const;
    const long = Math.hypot(...corner);
    const short = Math.hypot(a - b * Math.sin(lean), b * Math.cos(lean));
    expect(diagonalDifference.compute({ a, b, e })).toBeCloseTo(long - short, 9);
  });

  test('tell the angle back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 600, noNaN: true }),
        fc.double({ min: 30, max: 600, noNaN: true }),
        fc.double({ min: 0.001, max: 2, noNaN: true }),
        (a, b, e) => {
          expect(angleFromDiagonals(a, b, diagonalDifference.compute({ a, b, e }))).toBeCloseTo(e, 6);
        },
      ),
    );
  });
});
