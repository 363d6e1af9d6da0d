/** Least squares against numbers worked out elsewhere. */
import { expect, test } from 'vitest';
import { lineThrough, slopeWithin, student95 } from '../../../src/calc/core/line.ts';

test('the line through four points has the slope and the standard error reckoned by hand', () => {
  // x 1 2 3 4, y 2 4 5 8: Σ(x−2.5)² = 5, Σ(x−2.5)(y−4.75) = 9.5, slope 1.9;
  // left over 0.1, 0.2, −0.7, 0.4: Σr² = 0.70, error √(0.70/2/5) = 0.26458.
  const points = [
    [1, 2],
    [2, 4],
    [3, 5],
    [4, 8],
  ] as const;
  const line = lineThrough(points)!;
  expect(line.slope).toBeCloseTo(1.9, 10);
  expect(line.error).toBeCloseTo(0.26458, 5);
  // Student's t for two degrees of freedom is 4.303.
  expect(slopeWithin(points, line, 0.01)).toBeCloseTo(4.303 * 0.26458, 4);
});

test('two points bear only what the tool may have misread, and points at one x no line', () => {
  const points = [
    [8, 1],
    [12, 0],
  ] as const;
  const line = lineThrough(points)!;
  expect(line.error).toBeUndefined();
  // Both misread by 0.1 in opposite directions, over four points of moisture: 0.2/4.
  expect(slopeWithin(points, line, 0.1)).toBeCloseTo(0.05, 10);
  expect(
    lineThrough([
      [8, 1],
      [8, 2],
    ]),
  ).toBeUndefined();
  expect(student95(100)).toBeCloseTo(2.042, 3);
});
