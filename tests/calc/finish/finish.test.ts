/** Finishes against the published moisture-excluding effectiveness, and the coefficients they work with. */
import { csvParse } from 'd3-dsv';
import { describe, expect, test } from 'vitest';
import csv from '../../../content/data/moisture-excluding-effectiveness.csv?raw';
import { moistureCourse } from '../../../src/calc/air/diffusion.ts';
import { diffusionCoefficient } from '../../../src/calc/air/diffusion-coefficient.ts';
import { fractionDone } from '../../../src/calc/air/diffusion-series.ts';
import {
  effectivenessAfter,
  type Finish,
  finishes,
  notFitting,
  surfaceUnderFinish,
  TEST_BLOCK,
} from '../../../src/calc/finish/finish.ts';

const table = csvParse(csv);
const days = [1, 7, 14] as const;
const columns = ['mee_pct_1_day', 'mee_pct_7_days', 'mee_pct_14_days'] as const;

/** The published figures of a finish; undefined where the table has none. */
function published({ name, coats }: { name: string; coats: number }) {
  const rows = table.filter((row) => row.finish === name && Number(row.coats) === coats);
  expect(rows, `${name}, ${coats} coats: one row of the table`).toHaveLength(1);
  return columns.map((column) => (rows[0]![column] === '' ? undefined : Number(rows[0]![column])));
}
const coated = (resistance: number) => ({
  ...TEST_BLOCK,
  surface: surfaceUnderFinish.compute({ S_air: TEST_BLOCK.surface, r: resistance }),
});
const gained = (...given: Parameters<typeof fractionDone>) => {
  const fraction = fractionDone(...given);
  if (typeof fraction !== 'number') throw new Error(fraction.refused);
  return fraction;
};
const effectiveness = (resistance: number, day: number) =>
  100 * (1 - gained(coated(resistance), day) / gained(TEST_BLOCK, day));
const worstMiss = (resistance: number, figures: readonly (number | undefined)[]) =>
  Math.max(
    ...days.map((day, i) => Math.abs(effectiveness(resistance, day) - (figures[i] ?? Number.NaN)) || 0),
  );

describe.each([...finishes])('$name, $coats coats', (finish: Finish) => {
  const figures = published(finish);
  const known = figures.filter((figure) => figure !== undefined).length;

  test(`reproduces the published ${figures.join('/')} with its one resistance`, () => {
    expect(known).toBe(finish.figures === 'three' ? 3 : 1);
    expect(worstMiss(finish.resistance, figures)).toBeLessThan(finish.figures === 'three' ? 5 : 0.5);
  });

  test('carries the figures of the table', () => {
    expect(finish.published).toEqual(figures.filter((figure) => figure !== undefined));
  });

  test('would fit worse with a resistance a twentieth larger or smaller', () => {
    const { resistance } = finish;
    const others = resistance === 0 ? [0.01] : [resistance / 1.05, resistance * 1.05];
    for (const other of others)
      expect(worstMiss(other, figures)).toBeGreaterThan(worstMiss(resistance, figures));
  });
});

test.each([...notFitting])('$name, $coats coats, has no resistance that comes within 5 points', (finish) => {
  const figures = published(finish);
  expect(finish.published).toEqual(figures);
  for (let power = -3; power < 2; power += 0.01) expect(worstMiss(10 ** power, figures)).toBeGreaterThan(5);
});

test('the effectiveness that the page draws is that of the series, and a finish loses it in the end', () => {
  // Physics note B4: three coats of oil-modified urethane varnish in the model, 88, 65 and 43 %.
  for (const [i, expected] of [88, 65, 43].entries())
    expect(Math.abs(effectivenessAfter(days[i]!, 1.93) - expected)).toBeLessThan(1.5);
  expect(effectivenessAfter(7, 1.93)).toBe(effectiveness(1.93, 7));
  expect(effectivenessAfter(365, 1.93)).toBeLessThan(0.1);
});

test('the numeric solver gives the same effectiveness as the series', () => {
  const gain = (surface: number, day: number) => {
    const face = { surface, moisture: () => 20 };
    const course = moistureCourse({ ...TEST_BLOCK, front: face, back: face }, 6, 14);
    if ('refused' in course) throw new Error(course.refused);
    return course.mean[day]! - 6;
  };
  for (const day of days) {
    const found = 100 * (1 - gain(coated(1.93).surface, day) / gain(TEST_BLOCK.surface, day));
    expect(Math.abs(found - effectiveness(1.93, day))).toBeLessThan(0.5);
  }
});

describe('the diffusion coefficient', () => {
  // Physics note B3, table of transverse D at 20 °C in m²/s; 1e-11 m²/s = 0.864 mm²/day.
  test.each([
    [0.68, 6, 1.4e-11],
    [0.55, 12, 3.7e-11],
    [0.4, 9, 5.6e-11],
    [0.35, 15, 1.3e-10],
  ])(
    'at specific gravity %d and %d percent is %d m²/s, give or take a factor of two',
    (gravity, moisture, d) => {
      const found = diffusionCoefficient(gravity, moisture);
      if ('refused' in found) throw new Error(found.refused);
      expect(found.middle / 86_400e6 / d).toBeCloseTo(1, 6);
      expect([found.low, found.high]).toEqual([found.middle / 2, found.middle * 2]);
    },
  );

  test('lies between its neighbors for woods between the rows, and is level beyond the columns', () => {
    const middle = (gravity: number, moisture: number) =>
      (diffusionCoefficient(gravity, moisture) as { middle: number }).middle;
    expect(middle(0.6, 10)).toBeLessThan(middle(0.55, 10));
    expect(middle(0.6, 10)).toBeGreaterThan(middle(0.68, 10));
    expect(middle(0.5, 11)).toBeGreaterThan(middle(0.5, 10));
    expect(middle(0.5, 4)).toBe(middle(0.5, 6));
    expect(middle(0.5, 19)).toBe(middle(0.5, 15));
  });

  test('is refused for woods and moistures that the table does not reach', () => {
    expect(diffusionCoefficient(0.9, 8)).toEqual({
      refused: expect.stringMatching(/specific gravity is 0.9/),
    });
    expect(diffusionCoefficient(0.5, 35)).toEqual({
      refused: expect.stringMatching(/moisture content is 35/),
    });
  });
});
