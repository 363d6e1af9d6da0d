/** Twist: against four corners of a rim that are set on a plate. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lidGapOfTwist, twistAngle, windingSticksReading } from '../../../src/calc/square/twist.ts';

const rock = fc.double({ min: 0.01, max: 3, noNaN: true });
const width = fc.double({ min: 50, max: 400, noNaN: true });

/** Heights of the four corners, walked round, of a rim lying on three of them. */
const onThree = (h: number) => [0, 0, h, 0] as const;

test('a rim that lies balanced on two corners leaves half the rock under the other two', () => {
  fc.assert(
    fc.property(rock, (h) => {
      const [a, b, c, d] = onThree(h);
      // Tilted about the diagonal through b and d until a and c stand equally high: (a + c)/2 over (b + d)/2.
      const balanced = (a + c) / 2 - (b + d) / 2;
      expect(lidGapOfTwist.compute({ h })).toBeCloseTo(balanced, 12);
    }),
  );
});

test('the turn of one end is that of a line through its two corners', () => {
  fc.assert(
    fc.property(rock, width, (h, b) => {
      const [, , high, low] = onThree(h);
      const turn = Math.atan2(high - low, b);
      expect(twistAngle.compute({ h, b })).toBeCloseTo((turn * 180) / Math.PI, 10);
    }),
  );
});

test('winding sticks three times as long as the box is wide show three times the rock', () => {
  expect(windingSticksReading.compute({ h: 0.2, b: 100, S: 300 })).toBeCloseTo(0.6, 12);
});
