/** A year of air: the curve through twelve months, two readings, presets, and outdoor air brought in. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { climates } from '../../../src/calc/air/climates.ts';
import { waveKept } from '../../../src/calc/air/diffusion-series.ts';
import { SHUT_INSIDE } from '../../../src/calc/air/slab.ts';
import {
  curveThrough,
  halfYearLater,
  MID_MONTHS,
  moistureThrough,
  refuseYear,
  type YearOfAir,
} from '../../../src/calc/air/year.ts';
import { waveThrough, yearFromReadings } from '../../../src/calc/air/year-from-readings.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { settledSpread, settledYear } from '../../reference/diffusion-year.ts';

const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
const twelve = fc.array(fc.double({ min: 1, max: 99, noNaN: true }), { minLength: 12, maxLength: 12 });
const climate = (id: string) => climates.find((each) => each.id === id)!;
const throughYear = (year: YearOfAir) => {
  const moisture = known(moistureThrough(year));
  const days = Array.from({ length: 365 }, (_, day) => moisture(day));
  return { days, mean: days.reduce((sum, each) => sum + each, 0) / 365 };
};

describe('the curve through twelve months', () => {
  test('passes through each month at its middle: 15.5 January, day 181 + 15.5 for July', () => {
    expect(MID_MONTHS[0]).toBe(15.5);
    expect(MID_MONTHS[6]).toBe(196.5);
    fc.assert(
      fc.property(twelve, (monthly) => {
        const curve = curveThrough(monthly);
        for (const [i, day] of MID_MONTHS.entries()) expect(curve(day)).toBeCloseTo(monthly[i]!, 9);
      }),
    );
  });

  test('never leaves the range of the two months it runs between', () => {
    fc.assert(
      fc.property(twelve, fc.double({ min: 0, max: 365, noNaN: true }), (monthly, day) => {
        const after = MID_MONTHS.findIndex((middle) => middle > day);
        const next = after === -1 ? 0 : after;
        const pair = [monthly[next]!, monthly[(next + 11) % 12]!];
        expect(curveThrough(monthly)(day)).toBeGreaterThanOrEqual(Math.min(...pair) - 1e-9);
        expect(curveThrough(monthly)(day)).toBeLessThanOrEqual(Math.max(...pair) + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test('is continuous with a continuous slope, at every mid-month and across New Year', () => {
    fc.assert(
      fc.property(twelve, (monthly) => {
        const curve = curveThrough(monthly);
        for (const day of [...MID_MONTHS, 0, 365]) {
          const step = 1e-4;
          const [left, middle, right] = [curve(day - step), curve(day), curve(day + step)];
          expect(Math.abs(right - left)).toBeLessThan(0.01);
          expect(Math.abs((right - middle) / step - (middle - left) / step)).toBeLessThan(0.02);
        }
      }),
    );
  });

  test('repeats every 365 days, and is flat where all months are alike', () => {
    const curve = curveThrough(climate('heated-winter').year.humidity);
    expect(curve(-10)).toBeCloseTo(curve(355), 9);
    expect(curve(400)).toBeCloseTo(curve(35), 9);
    expect(curveThrough(Array(12).fill(44))(123.4)).toBeCloseTo(44, 9);
  });
});

describe('two hygrometer readings', () => {
  test('give back the wave they were taken from', () => {
    const at = (day: number) => 45 + 12 * Math.cos((2 * Math.PI * (day - 210)) / 365);
    const { mean, half } = known(waveThrough([40, at(40)], [180, at(180)], 210));
    expect([mean, half]).toEqual([expect.closeTo(45, 9), expect.closeTo(12, 9)]);
  });

  test('make a year that shows both readings on their days, within what twelve months can hold', () => {
    const winter = { day: 28, temperature: 19, humidity: 31 };
    const summer = { day: 205, temperature: 25, humidity: 58 };
    const year = known(yearFromReadings(winter, summer));
    for (const { day, humidity, temperature } of [winter, summer]) {
      expect(Math.abs(curveThrough(year.humidity)(day) - humidity)).toBeLessThan(1);
      expect(Math.abs(curveThrough(year.temperature)(day) - temperature)).toBeLessThan(0.5);
    }
  });

  test('too near each other in season, or leading past 100 %, are refused', () => {
    const spring = { day: 100, temperature: 20, humidity: 40 };
    const later = { day: 110, temperature: 20, humidity: 44 };
    expect(yearFromReadings(spring, later)).toEqual({
      refused: expect.stringMatching(/nearly the same point/),
    });
    // April and October lie at the same height of a wave that peaks in July.
    const autumn = { day: 320, temperature: 20, humidity: 44 };
    expect(yearFromReadings(spring, autumn)).toEqual({ refused: expect.stringMatching(/some months apart/) });
    const steep = yearFromReadings({ ...spring, humidity: 50 }, { day: 170, temperature: 20, humidity: 95 });
    expect(steep).toEqual({ refused: expect.stringMatching(/goes too far.* humidity in/) });
  });
});

describe('the presets', () => {
  test('all are years of possible air, and indoor ones have a wood moisture on every day', () => {
    for (const { year, where } of climates) {
      expect(refuseYear(year)).toBeUndefined();
      if (where === 'indoors') for (const each of throughYear(year).days) expect(each).toBeGreaterThan(2);
    }
  });

  // Wood Handbook (2010) figure 13-1 and Swedish Wood guidance, both read second-hand (indoor-moisture-content table).
  test.each([
    ['heated-winter', 8],
    ['heated-hard-winter', 7.5],
    ['dry-all-year', 6],
    ['warm-damp-coast', 11],
  ])('%s keeps wood at a mean of %d percent', (id, mean) => {
    expect(Math.abs(throughYear(climate(id).year).mean - mean)).toBeLessThan(0.25);
  });

  test('the hard winter stays within the humidities published for Swedish homes', () => {
    const { humidity } = climate('heated-hard-winter').year;
    for (const month of [11, 0, 1]) expect(humidity[month]).toBeGreaterThanOrEqual(10);
    for (const month of [11, 0, 1]) expect(humidity[month]).toBeLessThanOrEqual(25);
    for (const month of [5, 6, 7]) expect(humidity[month]).toBeGreaterThanOrEqual(45);
    for (const month of [5, 6, 7]) expect(humidity[month]).toBeLessThanOrEqual(60);
  });

  test('the unheated shed has wood at 11 to 15 % in summer and 19 to 23 % in winter, as under cover in Sweden', () => {
    const { days } = throughYear(climate('unheated').year);
    for (const day of [166, 196, 227]) expect(Math.abs(days[day]! - 13)).toBeLessThan(2);
    for (const day of [15, 45, 350]) expect(Math.abs(days[day]! - 21)).toBeLessThan(2);
  });
});

test('half a year later, January is July', () => {
  const year = climate('heated-winter').year;
  expect(halfYearLater(year).humidity[0]).toBe(year.humidity[6]);
  expect(halfYearLater(halfYearLater(year))).toEqual(year);
});

test.each<[string, Partial<YearOfAir>, RegExp]>([
  ['a humidity of 0', { humidity: [0, ...Array(11).fill(50)] }, /humidity in January is 0 %/],
  ['a humidity of 101', { humidity: [...Array(11).fill(50), 101] }, /humidity in December is 101 %/],
  [
    'a temperature beyond the formulas',
    { temperature: Array(12).fill(90) },
    /temperature in January is 90 °C/,
  ],
  ['a month left out', { humidity: Array(11).fill(50) }, /twelve months/],
  ['nonsense', { humidity: Array(12).fill(Number.NaN) }, /not a number/],
  ['air too damp for the sorption table', { humidity: Array(12).fill(98) }, /^January: .*5 to 95 %/],
])('%s is refused by name', (_, part, sentence) => {
  const year = { temperature: Array(12).fill(20), humidity: Array(12).fill(50), ...part };
  expect(moistureThrough(year)).toEqual({ refused: expect.stringMatching(sentence) });
});

describe('the settled year of a piece', () => {
  const wave = (day: number) => 9 + 3 * Math.cos((2 * Math.PI * (day - 210)) / 365);
  // The closed answer for a wave (`waveKept`) is another way to the same year.
  test.each([
    [6, 2.592, 8.64],
    [6, 2.592, 0.173],
    [20, 2.592, 0.518],
    [20, 2.592, 0.03],
  ])(
    'keeps as much of the wave, as late, as the closed answer: %d mm, D %d, S %d',
    (thickness, diffusion, surface) => {
      const face = { surface, moisture: wave };
      const { mean } = known(settledYear({ thickness, diffusion, front: face, back: face }));
      const { kept, lag } = known(waveKept({ thickness, diffusion, surface }, 365));
      for (const day of [0, 100, 210, 300]) {
        const expected = 9 + 3 * kept * Math.cos((2 * Math.PI * (day - 210 - lag)) / 365);
        expect(Math.abs(mean[day]! - expected)).toBeLessThan(0.01);
      }
      expect(Math.abs(mean[365]! - mean[0]!)).toBeLessThan(0.006);
    },
  );

  test('is told three times over the range of D: the slower the wood, the less and the later it swings', () => {
    const face = { surface: 8.64, moisture: wave };
    const spread = known(
      settledSpread({ thickness: 20, front: face, back: face }, { low: 1.3, middle: 2.6, high: 5.2 }),
    );
    const crest = (mean: Float64Array) => Math.max(...mean);
    expect(crest(spread.low.mean)).toBeLessThan(crest(spread.middle.mean));
    expect(crest(spread.middle.mean)).toBeLessThan(crest(spread.high.mean));
    const late = ({ mean }: { mean: Float64Array }) => mean.indexOf(crest(mean));
    expect(late(spread.low)).toBeGreaterThan(late(spread.middle));
    expect(late(spread.middle)).toBeGreaterThan(late(spread.high));
  });

  test('of a lid on a box that stays shut is that of one twice as thick in the open, and its faces differ', () => {
    const face = { surface: 8.64, moisture: wave };
    const shut = known(settledYear({ thickness: 6, diffusion: 2.592, front: face, back: SHUT_INSIDE }));
    const open = known(settledYear({ thickness: 12, diffusion: 2.592, front: face, back: face }));
    for (const day of [0, 90, 180, 270])
      expect(Math.abs(shut.mean[day]! - open.mean[day]!)).toBeLessThan(0.01);
    expect(Math.max(...shut.difference)).toBeGreaterThan(0.02);
    expect(Math.max(...open.difference)).toBeLessThan(1e-9);
  });

  test('is refused when both faces are sealed', () => {
    const face = { surface: 0, moisture: wave };
    const sealed = settledYear({ thickness: 6, diffusion: 3, front: face, back: face });
    expect(sealed).toEqual({ refused: expect.stringMatching(/both faces sealed/) });
  });
});
