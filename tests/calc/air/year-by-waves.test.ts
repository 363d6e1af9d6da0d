/** The year by waves against the numeric solver, which knows nothing of waves, and against single waves by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { climates } from '../../../src/calc/air/climates.ts';
import { waveKept } from '../../../src/calc/air/diffusion-series.ts';
import { SHUT_INSIDE } from '../../../src/calc/air/slab.ts';
import { dateOf, moistureThrough } from '../../../src/calc/air/year.ts';
import { settledMean, wavesOf } from '../../../src/calc/air/year-by-waves.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { settledYear } from '../../reference/diffusion-year.ts';

const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
const daily = (moisture: (day: number) => number) =>
  Float64Array.from({ length: 366 }, (_, day) => moisture(day));
const indoors = climates.filter(({ where }) => where === 'indoors');

test.each(indoors.flatMap(({ id }) => [3, 6.5, 15].map((thickness) => [id, thickness] as const)))(
  'in the climate %s a panel %d mm thick, one face sealed, has the year that the solver steps through',
  (id, thickness) => {
    const moisture = known(moistureThrough(climates.find((each) => each.id === id)!.year));
    const front = { surface: 8.64, moisture };
    for (const diffusion of [1.3, 5.2]) {
      const stepped = known(settledYear({ thickness, diffusion, front, back: SHUT_INSIDE })).mean;
      const slab = { thickness: 2 * thickness, diffusion, surface: 8.64 };
      const found = known(settledMean(known(wavesOf(daily(moisture))), slab));
      expect(found.length).toBe(366);
      // The solver itself is converged to 0.005 % MC.
      for (const [day, each] of found.entries()) expect(Math.abs(each - stepped[day]!)).toBeLessThan(0.006);
    }
  },
);

test('with a finish on both open faces it agrees with the solver too', () => {
  const moisture = known(moistureThrough(climates[0]!.year));
  const face = { surface: 0.17, moisture };
  const slab = { thickness: 20, diffusion: 2.6, surface: 0.17 };
  const stepped = known(settledYear({ ...slab, front: face, back: face })).mean;
  const found = known(settledMean(known(wavesOf(daily(moisture))), slab));
  for (const [day, each] of found.entries()) expect(Math.abs(each - stepped[day]!)).toBeLessThan(0.01);
});

test('one wave comes out as one wave, smaller and later; a still year stays still', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 24 }),
      fc.double({ min: 0.5, max: 40, noNaN: true }),
      fc.integer({ min: 0, max: 364 }),
      (times, thickness, crest) => {
        const wave = (day: number) => 9 + 2 * Math.cos((2 * Math.PI * times * (day - crest)) / 365);
        const slab = { thickness, diffusion: 2.6, surface: 8.64 };
        const { kept, lag } = known(waveKept(slab, 365 / times));
        const found = known(settledMean(known(wavesOf(daily(wave))), slab));
        for (const day of [0, 77, 200, 365])
          expect(found[day]!).toBeCloseTo(
            9 + 2 * kept * Math.cos((2 * Math.PI * times * (day - lag - crest)) / 365),
            9,
          );
      },
    ),
  );
  const still = known(
    settledMean(known(wavesOf(new Float64Array(365).fill(8))), { thickness: 6, diffusion: 3, surface: 9 }),
  );
  for (const each of still) expect(each).toBeCloseTo(8, 12);
});

test('half a year of air, air that is no number and a slab without thickness are refused', () => {
  expect(isRefused(wavesOf(new Float64Array(180)))).toBe(true);
  expect(wavesOf(new Float64Array(365).fill(Number.NaN))).toEqual({
    refused: expect.stringMatching(/not a number/),
  });
  const waves = known(wavesOf(new Float64Array(365).fill(8)));
  expect(settledMean(waves, { thickness: 0, diffusion: 3, surface: 9 })).toEqual({
    refused: expect.stringMatching(/thickness is 0 mm/),
  });
});

test('days of the year have dates', () => {
  // Sums of the months' lengths: 31 + 28 = 59 days before 1 March.
  expect([0, 30, 31, 59, 364, 365, -1, 58.9].map(dateOf)).toEqual([
    '1 January',
    '31 January',
    '1 February',
    '1 March',
    '31 December',
    '1 January',
    '31 December',
    '28 February',
  ]);
});
