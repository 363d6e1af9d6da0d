/** A year of air put to the panels of the example box: against the solver, the wave formula and work by hand. */
import { describe, expect, test } from 'vitest';
import {
  dayOfBuilding,
  figuresOf,
  moistureOf,
  panelMoisture,
  setupOf,
} from '../../../src/box/subjects/movement/panel-year.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { climates } from '../../../src/calc/air/climates.ts';
import { SHUT_INSIDE } from '../../../src/calc/air/slab.ts';
import { moistureThrough, type YearOfAir } from '../../../src/calc/air/year.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { settledSpread } from '../../reference/diffusion-year.ts';
import { exampleBox } from '../reckoned-box.ts';

const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
const year = climates[0]!.year;
const flat = (humidity: number, temperature = 20): YearOfAir => ({
  humidity: Array(12).fill(humidity),
  temperature: Array(12).fill(temperature),
});

test('a bare panel of a shut box has the three years that the numeric solver finds with one face sealed', () => {
  const found = known(panelMoisture(6.5, 0.5, year));
  const moisture = known(moistureThrough(year));
  const D = { low: found.diffusion / 2, middle: found.diffusion, high: found.diffusion * 2 };
  const solved = known(
    settledSpread({ thickness: 6.5, front: { surface: 8.64, moisture }, back: SHUT_INSIDE }, D),
  );
  for (const day of [0, 60, 150, 220, 300]) {
    expect(Math.abs(found.slow[day]! - solved.low.mean[day]!)).toBeLessThan(0.01);
    expect(Math.abs(found.middle[day]! - solved.middle.mean[day]!)).toBeLessThan(0.01);
    expect(Math.abs(found.fast[day]! - solved.high.mean[day]!)).toBeLessThan(0.01);
  }
  expect(found.lag[0]).toBeGreaterThan(found.lag[1]);
  expect(found.kept[0]).toBeLessThan(found.kept[1]);
});

test('a 3 mm panel of a shut box follows the year as the note has it for 6 mm in the open: 2 days late, all of its swing', () => {
  // Physics note B4, derived there for D = 3e-11 m²/s (2.592 mm²/day): 6 mm bare, yearly 1.00, lag 2 d.
  const found = known(panelMoisture(3, 0.5, year));
  const middle = Math.sqrt(found.lag[0] * found.lag[1]);
  expect(middle).toBeGreaterThan(1);
  expect(middle).toBeLessThan(3);
  expect(found.kept[0]).toBeGreaterThan(0.98);
});

describe('the day of building', () => {
  const cherry = { coefficient: 0.00248, shrinkage: 7.1 };
  const months = Float64Array.from({ length: 366 }, (_, day) => 9 + 2 * Math.cos((2 * Math.PI * day) / 365));

  test('knows what is still to come: built at 11 %, nothing up and 4 points down', () => {
    const day = known(dayOfBuilding(cherry, months, 0));
    expect([day.today, day.dampest]).toEqual([11, 11]);
    expect(day.driest).toBeCloseTo(7, 3);
    expect(day.perPoint).toBe(0.00248);
  });

  test('goes over to the shrinkage where the year leaves 6 to 14 %, and says so', () => {
    // 3000/7.1 − 30 + 16 = 408.5: 1/408.5 per point.
    const day = known(
      dayOfBuilding(
        cherry,
        months.map((each) => each + 5),
        0,
      ),
    );
    expect(day.method).toBe('shrinkage');
    expect(day.perPoint).toBeCloseTo(1 / 408.535, 7);
    expect(day.because).toMatch(/6 to 14 %/);
  });

  test('is refused for a wood without the other figure', () => {
    expect(
      dayOfBuilding(
        { coefficient: 0.002 },
        months.map((each) => each + 5),
        0,
      ),
    ).toEqual({
      refused: expect.stringMatching(/6 to 14 %/),
    });
  });
});

test('the panels are those of the box: what the grooves give less the play that was chosen', () => {
  const v = evaluate(exampleBox);
  // Inside 106 mm (100 and twice 3), grooves 4 mm deep: 114 mm, less 1.3 and 1.2 mm.
  expect(setupOf(v, 'bottom')).toMatchObject({ play: 1.3, groove: 4, allowance: 0.5 });
  expect(setupOf(v, 'bottom').width).toBeCloseTo(112.7, 9);
  expect(setupOf(v, 'lid').width).toBeCloseTo(112.8, 9);
  expect(figuresOf(v)).toMatchObject({ coefficient: 0.00248, shrinkage: 7.1 });
});

test('a wood too heavy for the diffusion figures is shown as following at once, and says so', () => {
  const found = known(panelMoisture(6, 0.88, year));
  expect(found.because).toMatch(/not known here.*specific gravity is 0.88/);
  expect(found.middle).toBe(found.air);
  expect([...found.lag, ...found.kept]).toEqual([0, 0, 1, 1]);
});

test.each<[string, YearOfAir, RegExp]>([
  ['humidity 0', flat(0), /humidity in January is 0 %/],
  ['humidity 100', flat(100), /^January: .*5 to 95 %/],
  [
    'humidity 97 in one month',
    { ...flat(50), humidity: flat(50).humidity.with(6, 97) },
    /^July: .*5 to 95 %/,
  ],
  ['frost below the table', flat(50, -10), /^January: .*−1.1/],
  ['heat beyond the formulas', flat(50, 60), /temperature in January is 60 °C/],
])('%s gives a sentence and no number', (_, air, sentence) => {
  expect(panelMoisture(6, 0.5, air)).toEqual({ refused: expect.stringMatching(sentence) });
});

test('a panel without thickness gives a sentence, also through the box, and the memory of years does not mix panels', () => {
  const v = evaluate(exampleBox);
  expect(isRefused(moistureOf({ ...v, bottomThickness: 0 }, 'bottom', year))).toBe(true);
  const [thin, thick] = [6.5, 15].map((bottomThickness) =>
    known(moistureOf({ ...v, bottomThickness }, 'bottom', year)),
  );
  expect(thick!.lag[0]).toBeGreaterThan(2 * thin!.lag[0]);
  expect(moistureOf({ ...v, bottomThickness: 6.5 }, 'bottom', year)).toBe(thin);
});
