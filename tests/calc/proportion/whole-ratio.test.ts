/** The nearest whole-number ratio, against fraction.js, against trying every denominator, and against Python. */
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { goldenRatio } from '../../../src/calc/proportion/named-ratios.ts';
import { nearestWholeRatio, type WholeRatio } from '../../../src/calc/proportion/whole-ratio.ts';

function nearest(ratio: number, largest: number): WholeRatio {
  const found = nearestWholeRatio(ratio, largest);
  if (isRefused(found)) throw new Error(found.refused);
  return found;
}

/** Tries every denominator: slow, and nothing like a tree. */
function bySearch(ratio: number, largest: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let q = 1; q <= largest; q++)
    least = Math.min(least, Math.abs(Math.max(1, Math.round(ratio * q)) / q - ratio));
  return least;
}

/** Convergents of the continued fraction that fraction.js finds. */
function convergents(ratio: number): { p: number; q: number }[] {
  let [before, last] = [
    { p: 0, q: 1 },
    { p: 1, q: 0 },
  ];
  return new Fraction(ratio).toContinued().map((term) => {
    [before, last] = [last, { p: Number(term) * last.p + before.p, q: Number(term) * last.q + before.q }];
    return last;
  });
}

const anyRatio = fc.double({ min: 0.2, max: 8, noNaN: true });
const anyLimit = fc.integer({ min: 1, max: 64 });

describe('the nearest whole-number ratio', () => {
  test.each([
    // Ratio, largest denominator, p, q, error in %: Python's Fraction.limit_denominator, physics notes A2.
    [85.6 / 53.98, 3, 5, 3, 5.1],
    [85.6 / 53.98, 5, 8, 5, 0.897],
    [85.6 / 53.98, 12, 19, 12, -0.154],
    [85.6 / 53.98, 32, 46, 29, 0.0274],
    [Math.SQRT2, 5, 7, 5, -1.01],
    [Math.SQRT2, 12, 17, 12, 0.173],
    [Math.SQRT2, 29, 41, 29, -0.03],
  ])('to %f, up to %i parts, is %i to %i', (ratio, largest, p, q, percent) => {
    const found = nearest(ratio, largest);
    expect([found.p, found.q]).toEqual([p, q]);
    expect(found.difference).toBeCloseTo(percent, 2);
  });

  test('to the golden ratio is a pair of Fibonacci neighbors, for every Fibonacci limit', () => {
    for (const [q, p] of [
      [1, 2],
      [2, 3],
      [3, 5],
      [5, 8],
      [8, 13],
      [13, 21],
      [21, 34],
      [34, 55],
    ] as const)
      expect(nearest(goldenRatio, q)).toMatchObject({ p, q });
  });

  test('is as near as the best of all denominators tried one by one', () => {
    fc.assert(
      fc.property(anyRatio, anyLimit, (ratio, largest) => {
        const { p, q } = nearest(ratio, largest);
        expect(q).toBeLessThanOrEqual(largest);
        expect(Math.abs(p / q - ratio)).toBeCloseTo(bySearch(ratio, largest), 12);
      }),
    );
  });

  test('is never worse than a convergent from fraction.js, and is that convergent where the limit is its own', () => {
    fc.assert(
      fc.property(anyRatio, anyLimit, (ratio, largest) => {
        const known = convergents(ratio).filter(({ p, q }) => p > 0 && q <= 64);
        const { p, q } = nearest(ratio, largest);
        for (const one of known)
          if (one.q <= largest)
            expect(Math.abs(p / q - ratio)).toBeLessThanOrEqual(Math.abs(one.p / one.q - ratio) + 1e-15);
        // The first convergent may tie with its neighbor at the same denominator; from q = 2 on there is one best.
        for (const one of known) if (one.q > 1) expect(nearest(ratio, one.q)).toMatchObject(one);
      }),
    );
  });

  test('is in lowest terms and finds a ratio that is whole already', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 }), fc.integer({ min: 1, max: 64 }), (a, b) => {
        const lowest = new Fraction(a, b);
        expect(nearest(a / b, 64)).toEqual({ p: Number(lowest.n), q: Number(lowest.d), difference: 0 });
      }),
    );
  });

  test('takes the smaller denominator of two equally near ratios: 1.25 lies midway between 1:1 and 3:2', () => {
    expect(nearest(1.25, 2)).toMatchObject({ p: 1, q: 1 });
  });

  test.each([0, -1.6, Number.NaN, Number.POSITIVE_INFINITY, 1e9])('refuses %f with a sentence', (ratio) => {
    expect(nearestWholeRatio(ratio, 8)).toHaveProperty('refused');
  });
});
