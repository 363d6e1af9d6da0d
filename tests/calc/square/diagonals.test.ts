/** Diagonals of a racked box: against the corners of a drawn parallelogram, and against a printed table. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diagonalDifference, endShift, leanFromDiagonals } from '../../../src/calc/square/diagonals.ts';

const side = fc.double({ min: 40, max: 600, noNaN: true });
const lean = fc.double({ min: 0.001, max: 2, noNaN: true });
const radians = Math.PI / 180;
/** Both diagonals of a parallelogram, from its corners. */
const drawn = (a: number, b: number, e: number) => {
  const [aside, up] = [b * Math.sin(e * radians), b * Math.cos(e * radians)];
  return { long: Math.hypot(a + aside, up), short: Math.hypot(a - aside, up), aside };
};

describe('the diagonals of a racked box', () => {
  test('differ as the corners of the drawn parallelogram do', () => {
    fc.assert(
      fc.property(side, side, lean, (a, b, e) => {
        const { long, short } = drawn(a, b, e);
        expect(diagonalDifference.compute({ a, b, e })).toBeCloseTo(long - short, 8);
      }),
    );
  });

  test('tell the angle back, and how far the far end stands aside', () => {
    fc.assert(
      fc.property(side, side, lean, (a, b, e) => {
        const { long, short, aside } = drawn(a, b, e);
        expect(leanFromDiagonals.compute({ a, b, D: long - short })).toBeCloseTo(e, 6);
        expect(endShift.compute({ a, b, D: long - short })).toBeCloseTo(aside, 6);
      }),
    );
  });

  // What 1 mm means, to two digits: worked by hand from D d / (2 a b) and D d / (2 a).
  test.each([
    [150, 150, 0.27, 0.71],
    [200, 100, 0.32, 0.56],
    [250, 150, 0.22, 0.58],
    [400, 200, 0.16, 0.56],
  ])('1 mm apart in a box of %f by %f mm is %f° and %f mm', (a, b, angle, aside) => {
    expect(leanFromDiagonals.compute({ a, b, D: 1 })).toBeCloseTo(angle, 2);
    expect(endShift.compute({ a, b, D: 1 })).toBeCloseTo(aside, 2);
  });
});
