/** A weighing series: when it has settled, where it is going, and when that cannot be said. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { daysLeft, endingOf, settledBy } from '../../../src/calc/air/weighings.ts';

/** A course drawn up here: `end` + `way` e^(−day/`tau`). */
const course = (days: readonly number[], end: number, way: number, tau: number) =>
  days.map((day) => [day, end + way * Math.exp(-day / tau)] as const);

test('the end and the time constant of an exact exponential course are found', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 100, max: 5000, noNaN: true }),
      fc.double({ min: 0.03, max: 0.3, noNaN: true }),
      fc.double({ min: 3, max: 12, noNaN: true }),
      (end, share, tau) => {
        const found = endingOf(course([0, 2, 5, 9, 14, 20], end, end * share, tau), 0.01);
        if ('refused' in found) throw new Error(found.refused);
        expect(found.mass / end).toBeCloseTo(1, 3);
        expect(found.tau / tau).toBeCloseTo(1, 1);
      },
    ),
    { numRuns: 60 },
  );
});

test('from 10 % to 1 % off the end takes the time constant times the natural logarithm of 10', () => {
  expect(daysLeft({ mass: 500, tau: 6, between: [500, 500] }, 550, 1)).toBeCloseTo(6 * Math.LN10, 5);
  expect(daysLeft({ mass: 500, tau: 6, between: [500, 500] }, 501, 1)).toBe(0);
});

test('too few weighings, an up and down, and a change the scale hardly reads are refused with the reason', () => {
  const why = (found: ReturnType<typeof endingOf>) => ('refused' in found ? found.refused : '');
  expect(
    why(
      endingOf(
        [
          [0, 520],
          [3, 510],
          [6, 505],
        ],
        0.1,
      ),
    ),
  ).toContain('4 weighings');
  expect(
    why(
      endingOf(
        [
          [0, 520],
          [3, 500],
          [6, 512],
          [9, 495],
        ],
        0.1,
      ),
    ),
  ).toContain('up and down');
  expect(
    why(
      endingOf(
        [
          [0, 500],
          [3, 499.9],
          [6, 499.8],
          [9, 499.7],
        ],
        0.1,
      ),
    ),
  ).toContain('hardly more');
});

test('a piece has settled when weighings three days apart agree within 0.3 %', () => {
  // 3 g of 1000 is 0.3 %; 4 g is not.
  expect(
    settledBy(
      [
        [0, 1000],
        [3, 997],
      ],
      3,
    ),
  ).toMatchObject({ settled: true, days: 3 });
  expect(
    settledBy(
      [
        [0, 1000],
        [3, 996],
      ],
      3,
    ),
  ).toMatchObject({ settled: false });
  expect(
    settledBy(
      [
        [0, 1000],
        [2, 1000],
      ],
      3,
    ),
  ).toHaveProperty('refused');
});
