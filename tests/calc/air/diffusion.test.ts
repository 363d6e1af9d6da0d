/**
 * Moisture in a slab: the numeric solver against the series, the series against the tables of physics note B3 and B4.
 * Over 150 lines: one solver, every other way to its numbers.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moistureCourse } from '../../../src/calc/air/diffusion.ts';
import * as series from '../../../src/calc/air/diffusion-series.ts';
import type { Course, Slab } from '../../../src/calc/air/slab.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';

const { halfTime, ninetyTime, root } = series;
const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
const fractionDone = (...given: Parameters<typeof series.fractionDone>) =>
  known(series.fractionDone(...given));
const daysUntil = (...given: Parameters<typeof series.daysUntil>) => known(series.daysUntil(...given));
const waveKept = (...given: Parameters<typeof series.waveKept>) => known(series.waveKept(...given));

/** m²/s to mm²/day and m/s to mm/day: the tables are in SI. */
const perDay = (squareMetersPerSecond: number) => squareMetersPerSecond * 1e6 * 86_400;
const speed = (metersPerSecond: number) => metersPerSecond * 1e3 * 86_400;

const run = (...given: Parameters<typeof moistureCourse>): Course => known(moistureCourse(...given));
const even = (thickness: number, diffusion: number, surface: number, air = 12): Slab => {
  const face = { surface, moisture: () => air };
  return { thickness, diffusion, front: face, back: face };
};
const anySlab = fc.record({
  thickness: fc.double({ min: 3, max: 25, noNaN: true }),
  diffusion: fc.double({ min: 1, max: 12, noNaN: true }),
  front: fc.double({ min: 0.05, max: 50, noNaN: true }),
  back: fc.double({ min: 0.05, max: 50, noNaN: true }),
});

describe('the series', () => {
  // Physics note B3: 50 % at 0.04918 L²/D, 63 % at 0.0801, 90 % at 0.2120, 99 % at 0.4453.
  test.each([
    [0.5, 0.04918, 5],
    [0.632, 0.0801, 3],
    [0.9, 0.212, 4],
    [0.99, 0.4453, 4],
  ])('reaches %d of the change at %d times thickness squared over D', (fraction, time, digits) => {
    const open = { thickness: 10, diffusion: 10, surface: Number.POSITIVE_INFINITY };
    expect(daysUntil(fraction, open) / 10).toBeCloseTo(time, digits);
  });

  // Physics note B3, "Days to reach 50 % / 90 % of the change", printed to two figures.
  test.each([
    [3, 3e-11, Number.POSITIVE_INFINITY, 0.17, 0.74],
    [6, 3e-11, Number.POSITIVE_INFINITY, 0.68, 2.9],
    [10, 3e-11, Number.POSITIVE_INFINITY, 1.9, 8.2],
    [20, 3e-11, Number.POSITIVE_INFINITY, 7.6, 33],
    [3, 3e-11, 1e-7, 0.3, 1.1],
    [6, 3e-11, 1e-7, 0.95, 3.7],
    [10, 3e-11, 1e-7, 2.4, 9.4],
    [20, 3e-11, 1e-7, 8.5, 35],
    [3, 1e-10, 1e-7, 0.18, 0.61],
    [6, 1e-10, 1e-7, 0.47, 1.6],
    [10, 1e-10, 1e-7, 1.0, 3.7],
    [20, 1e-10, 1e-7, 3.2, 12],
  ])('%d mm, D %d, S %d: half in %d days, nine tenths in %d', (thickness, d, s, half, ninety) => {
    const slab = { thickness, diffusion: perDay(d), surface: speed(s) };
    // 3.2 %: half a unit in the second figure of 1.6.
    expect(Math.abs(daysUntil(0.5, slab) / half - 1)).toBeLessThan(0.032);
    expect(Math.abs(daysUntil(0.9, slab) / ninety - 1)).toBeLessThan(0.032);
    const rule = halfTime.compute({ T: thickness, D: slab.diffusion, S: slab.surface });
    expect(Math.abs(rule / daysUntil(0.5, slab) - 1)).toBeLessThan(0.04);
    if (s === Number.POSITIVE_INFINITY) {
      expect(ninetyTime.compute({ T: thickness, D: slab.diffusion }) / daysUntil(0.9, slab)).toBeCloseTo(
        1,
        3,
      );
    }
  });

  test('agrees with the half-time rule within 4 % over all of its range', () => {
    const inputs = fc.record({
      T: fc.double({ min: 3, max: 100, noNaN: true }),
      D: fc.double({ min: 0.5, max: 20, noNaN: true }),
      S: fc.double({ min: 0.02, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(inputs, ({ T, D, S }) => {
        const exact = daysUntil(0.5, { thickness: T, diffusion: D, surface: S });
        expect(Math.abs(halfTime.compute({ T, D, S }) / exact - 1)).toBeLessThan(0.04);
      }),
    );
  });

  test('gives the worked value of physics note B3: 0.51397 after a day for 6 mm, D 3e-11, S 1e-7', () => {
    const slab = { thickness: 6, diffusion: perDay(3e-11), surface: speed(1e-7) };
    expect(fractionDone(slab, 1)).toBeCloseTo(0.51397, 5);
  });

  test('its roots satisfy b tan b = Bi, one in each interval', () => {
    for (const biot of [0.01, 1, 30]) {
      for (const n of [0, 1, 7]) {
        const b = root(n, biot);
        expect(b * Math.tan(b)).toBeCloseTo(biot, 5);
        expect(Math.floor(b / Math.PI)).toBe(n);
      }
    }
  });

  // Physics note B4, "swing kept" of a day, a week and a year, and the lag of the year. D = 3e-11 m²/s.
  test.each([
    [6, 1e-7, 0.16, 0.57, 1.0, 2],
    [6, 6e-9, 0.025, 0.16, 0.99, 7],
    [6, 2e-9, 0.009, 0.06, 0.95, 18],
    [20, 1e-7, 0.05, 0.15, 0.96, 14],
    [20, 6e-9, 0.008, 0.05, 0.87, 29],
  ])(
    '%d mm at S %d keeps %d of a day, %d of a week, %d of a year, %d days late',
    (thickness, s, day, week, year, lag) => {
      const slab = { thickness, diffusion: perDay(3e-11), surface: speed(s) };
      expect(Math.abs(waveKept(slab, 1).kept - day)).toBeLessThan(0.005);
      expect(Math.abs(waveKept(slab, 7).kept - week)).toBeLessThan(0.006);
      expect(Math.abs(waveKept(slab, 365).kept - year)).toBeLessThan(0.006);
      expect(Math.abs(waveKept(slab, 365).lag - lag)).toBeLessThan(1);
    },
  );
});

describe('questions without sense', () => {
  const slab = { thickness: 6, diffusion: 3, surface: 8 };
  test.each<[string, unknown, RegExp]>([
    ['no thickness', series.daysUntil(0.5, { ...slab, thickness: 0 }), /thickness is 0 mm/],
    ['sealed faces', series.fractionDone({ ...slab, surface: 0 }, 3), /sealed/],
    [
      'a diffusion coefficient that is no number',
      series.waveKept({ ...slab, diffusion: Number.NaN }, 7),
      /not a number/,
    ],
    ['the whole of the change', series.daysUntil(1, slab), /share of the change is 1/],
    ['a time before the start', series.fractionDone(slab, -1), /time is -1 days/],
    ['a wave without a period', series.waveKept(slab, 0), /period is 0 days/],
  ])('%s is refused', (_, answer, sentence) => {
    expect(answer).toEqual({ refused: expect.stringMatching(sentence) });
  });

  test('even the thickest piece and the shortest wave give a number', () => {
    const { kept, lag } = waveKept(
      { thickness: 100, diffusion: 0.1, surface: Number.POSITIVE_INFINITY },
      0.01,
    );
    // Far inside, only the skin follows: 1/(reach √2) of the wave, an eighth of the period late.
    expect(kept * 50 * Math.sqrt(Math.PI / 0.001) * Math.SQRT2).toBeCloseTo(1, 6);
    expect(lag).toBeCloseTo(0.01 / 8, 9);
  });
});

describe('the numeric solver', () => {
  test.each([
    [6, 2.6, Number.POSITIVE_INFINITY],
    [6, 2.6, 8.64],
    [10, 8.64, 8.64],
    [20, 1.3, 0.5],
    [15.9, 17.28, 0.17],
  ])('follows the series within 0.5 %% of the change: %d mm, D %d, S %d', (thickness, diffusion, surface) => {
    const { mean } = run(even(thickness, diffusion, surface), 8, 40);
    for (const day of [1, 2, 3, 7, 14, 40]) {
      const expected = fractionDone({ thickness, diffusion, surface }, day);
      expect(Math.abs((mean[day]! - 8) / 4 - expected)).toBeLessThan(0.005);
    }
  });

  /** Hours and days told, and the part of a day that the solver's unit of time is for them. */
  const told = [
    [1 / 24, [1, 6, 24]],
    [1, [1, 7, 30]],
  ] as const;
  // Crank, The Mathematics of Diffusion, ch. 4, as in `diffusion-series.ts`: faces that follow at once, and faces in the air of a room.
  test.each(
    [6, 25, 50].flatMap((thickness) => [Number.POSITIVE_INFINITY, 8.64].map((s) => [thickness, s] as const)),
  )(
    'is within 2 %% of the change done so far, from the first hour to the thirtieth day: %d mm, S %d',
    (thickness, surface) => {
      for (const [unit, times] of told) {
        const { mean } = run(even(thickness, 2.6 * unit, surface * unit), 8, 30);
        for (const time of times) {
          const expected = fractionDone({ thickness, diffusion: 2.6, surface }, time * unit);
          const miss = (mean[time]! - 8) / 4 / expected - 1;
          expect(Math.abs(miss), `${time} times ${unit} day: ${(100 * miss).toFixed(2)} %`).toBeLessThan(
            0.02,
          );
        }
      }
    },
  );

  test('is within 5 % with the sixteen cells and one step a day that a slider moves, also for years', () => {
    for (const thickness of [6, 25, 50]) {
      const { mean } = run(even(thickness, 2.6, 8.64), 8, 480, 0, { cells: 16, perDay: 1 });
      for (const day of [1, 2, 7, 30, 120, 480]) {
        const expected = fractionDone({ thickness, diffusion: 2.6, surface: 8.64 }, day);
        expect(Math.abs((mean[day]! - 8) / 4 / expected - 1), `${thickness} mm, day ${day}`).toBeLessThan(
          0.05,
        );
      }
    }
  });

  test('comes four times closer when cells and steps are halved', () => {
    const slab = { thickness: 12, diffusion: 3, surface: 4 };
    const miss = (cells: number, steps: number) =>
      Math.abs(
        (run(even(12, 3, 4), 8, 6, 0, { cells, perDay: steps }).mean[6]! - 8) / 4 - fractionDone(slab, 6),
      );
    const [coarse, middle, fine] = [miss(8, 2), miss(16, 4), miss(32, 8)];
    expect(coarse! / middle!).toBeGreaterThan(3);
    expect(middle! / fine!).toBeGreaterThan(3);
    expect(fine).toBeLessThan(6e-4);
  });

  test('keeps water: what the mean gains is what crossed the two faces', () => {
    fc.assert(
      fc.property(anySlab, fc.double({ min: 2, max: 20, noNaN: true }), (slab, start) => {
        const wave = (phase: number) => (day: number) => 9 + 4 * Math.sin(day / 9 + phase);
        const { mean, gained } = run(
          {
            ...slab,
            front: { surface: slab.front, moisture: wave(0) },
            back: { surface: slab.back, moisture: wave(2) },
          },
          start,
          30,
        );
        expect((mean[30]! - mean[0]!) * slab.thickness).toBeCloseTo(gained.front + gained.back, 8);
      }),
      { numRuns: 50 },
    );
  });

  test('turns over: swapping the faces swaps the course and changes the sign of the difference', () => {
    fc.assert(
      fc.property(anySlab, ({ thickness, diffusion, front, back }) => {
        const one = { surface: front, moisture: (day: number) => 8 + day / 10 };
        const other = { surface: back, moisture: () => 11 };
        const as = run({ thickness, diffusion, front: one, back: other }, 9, 20);
        const turned = run({ thickness, diffusion, front: other, back: one }, 9, 20);
        expect(turned.mean[20]).toBeCloseTo(as.mean[20]!, 9);
        expect(turned.difference[20]).toBeCloseTo(-as.difference[20]!, 9);
        expect(turned.front[20]).toBeCloseTo(as.back[20]!, 9);
      }),
      { numRuns: 50 },
    );
  });

  test('like faces in like air never bend the piece, and the moisture leaves the range of its causes by half a percent of the change at most', () => {
    fc.assert(
      fc.property(anySlab, ({ thickness, diffusion, front }) => {
        const { mean, difference } = run(even(thickness, diffusion, front, 14), 6, 60);
        for (const day of mean.keys()) {
          expect(Math.abs(difference[day]!)).toBeLessThan(1e-9);
          // A thin piece is there within hours: a step of a day swings past the end a little, and back with the next.
          expect(mean[day]).toBeGreaterThanOrEqual(6 - 1e-9);
          expect(mean[day]).toBeLessThanOrEqual(14 + 0.005 * (14 - 6));
        }
      }),
      { numRuns: 30 },
    );
  });

  test('between two steady airs the profile ends straight, and its ends follow from resistances in series', () => {
    const face = (surface: number, air: number) => ({ surface, moisture: () => air });
    const { difference, front, back } = run(
      { thickness: 8, diffusion: 4, front: face(2, 12), back: face(4, 6) },
      9,
      400,
    );
    // 6 points over 1/2 + 8/4 + 1/4 days per mm; the wood itself holds 8/4 of it.
    const flow = 6 / 2.75;
    expect(difference[400]).toBeCloseTo(flow * 2, 6);
    expect(front[400]).toBeCloseTo(12 - flow / 2, 6);
    expect(back[400]).toBeCloseTo(6 + flow / 4, 6);
  });

  test('a piece sealed on one side behaves like one of twice the thickness open on both', () => {
    const open = { surface: 8.64, moisture: () => 12 };
    const sealed = { surface: 0, moisture: () => 0 };
    const { mean } = run({ thickness: 6, diffusion: 2.6, front: open, back: sealed }, 8, 10);
    const expected = fractionDone({ thickness: 12, diffusion: 2.6, surface: 8.64 }, 10);
    expect(Math.abs((mean[10]! - 8) / 4 - expected)).toBeLessThan(0.005);
  });

  test('refuses air that is no number on some day, and no cells to work with', () => {
    const broken = { surface: 8, moisture: (day: number) => (day > 2 ? Number.NaN : 9) };
    const slab = { thickness: 6, diffusion: 3, front: broken, back: { surface: 8, moisture: () => 9 } };
    expect(moistureCourse(slab, 8, 5)).toEqual({
      refused: expect.stringMatching(/not a number on some day/),
    });
    expect(moistureCourse(even(6, 3, 8), 8, 5, 0, { cells: 0 })).toEqual({
      refused: expect.stringMatching(/cells is 0/),
    });
  });

  test.each([
    ['no thickness', even(0, 3, 8), 8, /thickness is 0 mm/],
    ['a diffusion coefficient of zero', even(6, 0, 8), 8, /diffusion coefficient is 0/],
    ['a negative surface', even(6, 3, -1), 8, /surface coefficient of -1/],
    ['a start above 30 %', even(6, 3, 8), 35, /moisture at the start is 35 %/],
    ['a start that is no number', even(6, 3, 8), Number.NaN, /not a number/],
  ])('refuses %s', (_, slab, start, sentence) => {
    expect(moistureCourse(slab, start, 5)).toEqual({ refused: expect.stringMatching(sentence) });
  });
});
