/** What the sayings about gaps assume without saying it, and what a chosen gap leaves. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changeByShrinkage, perPointFromShrinkage } from '../../../src/calc/movement/movement.ts';
import { playAtDampest, riseForAllowance, widthBesidePlay } from '../../../src/calc/movement/panel-play.ts';

const foot = 12 * 25.4;
// Coefficients along the rings: Wood Handbook Table 13-5.
const cherry = 0.00248;
const redOak = 0.00369;

test.each([
  // Common practice, no source; 3.175 / (304.8 · C) and 6.35 / (304.8 · C) by hand.
  ['1/8 in per foot on flat-sawn cherry', foot / 96, cherry, 4.2],
  ['1/8 in per foot on flat-sawn red oak', foot / 96, redOak, 2.8],
  ['1/4 in per foot on flat-sawn red oak', foot / 48, redOak, 5.6],
])('%s is used up by a rise of so many points: %d', (_, T, C, points) => {
  expect(riseForAllowance.compute({ T, W: foot, C })).toBeCloseTo(points, 1);
});

test('1/16 in off a 5 in panel of flat-sawn black walnut is used up by 4.6 points', () => {
  // 1.5875 / (127 · 0.00274) = 4.56.
  expect(riseForAllowance.compute({ T: 25.4 / 16, W: 127, C: 0.00274 })).toBeCloseTo(4.56, 2);
});

test('at just that rise the play is used up', () => {
  const inputs = fc.record({
    T: fc.double({ min: 0.2, max: 6, noNaN: true }),
    W: fc.double({ min: 10, max: 600, noNaN: true }),
    C: fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
  });
  fc.assert(
    fc.property(inputs, ({ T, W, C }) => {
      const u = riseForAllowance.compute({ T, W, C });
      expect(playAtDampest.compute({ p: T, W, C, u })).toBeCloseTo(0, 9);
    }),
  );
});

test('a panel and its play fill the way from groove bottom to groove bottom', () => {
  // 106 mm inside, two grooves of 4 mm, 0.65 mm at each side: 114 − 1.3.
  expect(widthBesidePlay.compute({ B: 114, p: 1.3 })).toBeCloseTo(112.7, 9);
});

test('the movement per point by shrinkage gives the change of the shrinkage method', () => {
  // Black walnut, 7.8 % (Wood Handbook Table 4-3), 100 mm from 6 to 14 %: 2.218 mm by that method.
  const C = perPointFromShrinkage.compute({ S: 7.8, M_i: 6 });
  expect(100 * C * 8).toBeCloseTo(2.218, 3);
  expect(100 * C * 8).toBeCloseTo(changeByShrinkage.compute({ D: 100, S: 7.8, M_i: 6, M_f: 14 }), 12);
});
