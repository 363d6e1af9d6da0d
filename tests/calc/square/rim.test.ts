/** The rim on the plate, against every plane that could be rubbed. */
import { expect, test } from 'vitest';
import { lipAfterRim, rimLoss } from '../../../src/calc/square/rim.ts';

/** Least loss of the corner that loses most, over a fine grid of planes that reach down to all four corners. */
function leastOfAllPlanes(corners: readonly [number, number, number, number]): number {
  const [one, two, three, four] = corners;
  const low = Math.min(...corners);
  let least = Number.POSITIVE_INFINITY;
  const steps = 40;
  const heights = Array.from({ length: 2 * steps + 1 }, (_, i) => 2 * low * (1 - i / (2 * steps)));
  // A plane is given by three of its corners; the fourth follows, since the sums across are equal.
  for (const a of heights)
    for (const b of heights)
      for (const c of heights) {
        const d = a + c - b;
        const losses = [one - a, two - b, three - c, four - d];
        if (losses.every((loss) => loss >= -1e-9)) least = Math.min(least, Math.max(...losses));
      }
  return least;
}

test('of all planes under a rim with three level corners and one 0.4 mm lower, none takes less than 0.2 mm off the worst corner', () => {
  expect(rimLoss.compute({ h: 0.4 })).toBeCloseTo(leastOfAllPlanes([0, 0, 0, -0.4]), 9);
});

test('3.5 mm above the groove are 3.3 at two corners once a rock of 0.4 mm is rubbed off', () => {
  expect(lipAfterRim.compute({ m: 3.5, h: 0.4 })).toBeCloseTo(3.3, 12);
});
