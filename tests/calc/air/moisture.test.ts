/** Equilibrium moisture content against Wood Handbook (2010) Table 4-2, p. 4-4, cell by cell, and against its own inverse. (Over 150 lines: each known mistake is written out beside the right form.) */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTable } from '../../../src/build/tables.ts';
import {
  equilibriumMoisture,
  moistureFromMass,
  moistureInAir,
  moistureOfAir,
  sorptionInputs,
  tabulatedAir,
} from '../../../src/calc/air/moisture.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { humidityForMoisture, humidityTolerance } from '../../reference/humidity-for-moisture.ts';

interface Cell {
  readonly celsius: number;
  readonly fahrenheit: number;
  readonly humidity: number;
  readonly printed: number;
}
const cells: readonly Cell[] = readTable('equilibrium-moisture-content').flatMap((row) =>
  Array.from({ length: 19 }, (_, index) => 5 * (index + 1)).map((humidity) => ({
    // The table prints °C rounded to 0.1; its rows are whole °F.
    celsius: (Number(row.temperature_f) - 32) / 1.8,
    fahrenheit: Number(row.temperature_f),
    humidity,
    printed: Number(row[`emc_pct_at_rh_${humidity}`]),
  })),
);

/** Largest difference from the printed table, percent points, of any formula. */
const worst = (formula: (cell: Cell) => number, of = cells) =>
  Math.max(...of.map((cell) => Math.abs(formula(cell) - cell.printed)));

/** Wood Handbook eq. 4-5 a second time, written from the equation with its °F constants; `change` makes it wrong on purpose. */
const fahrenheitForm = (t: number, humidity: number, change: { k1?: number } = {}) => {
  const h = humidity / 100;
  const W = 330 + 0.452 * t + 0.00415 * t ** 2;
  const K = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
  const K1 = 6.34 + 0.000775 * t - (change.k1 ?? 0.0000935) * t ** 2;
  const K2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
  return (
    (1800 / W) *
    ((K * h) / (1 - K * h) +
      (K1 * K * h + 2 * K1 * K2 * K ** 2 * h ** 2) / (1 + K1 * K * h + K1 * K2 * K ** 2 * h ** 2))
  );
};

describe('the printed table (Wood Handbook 2010, Table 4-2)', () => {
  test('has 18 temperatures by 19 humidities', () => {
    expect(cells).toHaveLength(342);
  });

  test('is met in every cell within 0.07 points, from the temperature in °F turned to °C', () => {
    for (const cell of cells)
      expect(
        Math.abs(equilibriumMoisture(cell.celsius, cell.humidity) - cell.printed),
        `${cell.fahrenheit} °F, ${cell.humidity} %`,
      ).toBeLessThanOrEqual(0.07);
  });

  test('is met in every cell within 0.07 points from the rounded °C that the table prints as well', () => {
    expect(worst((cell) => equilibriumMoisture(Number(cell.celsius.toFixed(1)), cell.humidity))).toBeLessThan(
      0.07,
    );
  });

  test.each([
    // temperature °F, humidity %, printed % (Table 4-2)
    [70, 30, 6.2],
    [70, 50, 9.2],
    [70, 75, 14.4],
    [70, 95, 23.9],
    [30, 75, 14.9],
    [30, 95, 24.3],
    [100, 50, 8.7],
    [100, 90, 19.5],
  ])('says that at %d °F and %d %% wood settles to %d %%', (fahrenheit, humidity, printed) => {
    expect(equilibriumMoisture((fahrenheit - 32) / 1.8, humidity)).toBeCloseTo(printed, 1);
  });

  test('agrees with the °F form of the equation within 0.013 points', () => {
    for (const { celsius, fahrenheit, humidity } of cells)
      expect(
        Math.abs(equilibriumMoisture(celsius, humidity) - fahrenheitForm(fahrenheit, humidity)),
      ).toBeLessThan(0.0135);
  });
});

describe('mistakes seen in public copies of the equation miss the table, so this test would catch them', () => {
  const parts = ({ celsius, humidity }: Cell) => sorptionInputs(celsius, humidity);

  test('°C fed into the °F constants: 0.2 to 0.5 points off near room temperature', () => {
    const wrong = ({ celsius, humidity }: Cell) => fahrenheitForm(celsius, humidity);
    const room = cells.filter(
      ({ fahrenheit, humidity }) => fahrenheit === 70 && humidity >= 50 && humidity <= 90,
    );
    for (const cell of room) expect(wrong(cell) - cell.printed).toBeGreaterThan(0.15);
    expect(worst(wrong)).toBeGreaterThan(1);
  });

  test('K1 in °F typed with 0.0000453 for 0.0000935', () => {
    expect(
      worst(({ fahrenheit, humidity }) => fahrenheitForm(fahrenheit, humidity, { k1: 0.0000453 })),
    ).toBeGreaterThan(0.14);
  });

  test('the factor 2 left out of the second fraction', () => {
    const wrong = (cell: Cell) => {
      const { h, W, K, K1, K2 } = parts(cell);
      const one = K1 * K * h;
      const two = K1 * K2 * K * K * h * h;
      return (1800 / W) * ((K * h) / (1 - K * h) + (one + two) / (1 + one + two));
    };
    expect(worst(wrong)).toBeGreaterThan(0.5);
  });

  test('the products K h left out of the second fraction', () => {
    const wrong = (cell: Cell) => {
      const { h, W, K, K1, K2 } = parts(cell);
      return (1800 / W) * ((K * h) / (1 - K * h) + (K1 + 2 * K1 * K2) / (1 + K1 + K1 * K2));
    };
    expect(worst(wrong)).toBeGreaterThan(0.5);
  });

  test('only the first fraction multiplied by 1800 / W', () => {
    const wrong = (cell: Cell) => {
      const { h, W, K, K1, K2 } = parts(cell);
      const one = K1 * K * h;
      const two = K1 * K2 * K * K * h * h;
      return ((1800 / W) * (K * h)) / (1 - K * h) + (one + 2 * two) / (1 + one + two);
    };
    expect(worst(wrong)).toBeGreaterThan(0.5);
  });

  test('humidity put for temperature inside the constants', () => {
    const wrong = ({ humidity }: Cell) =>
      moistureOfAir.compute({ ...sorptionInputs(humidity, humidity), h: humidity / 100 });
    expect(worst(wrong)).toBeGreaterThan(0.5);
  });
});

const temperatures = fc.double({
  min: tabulatedAir.temperature[0],
  max: tabulatedAir.temperature[1],
  noNaN: true,
});
const humidities = fc.double({ min: tabulatedAir.humidity[0], max: tabulatedAir.humidity[1], noNaN: true });

test('damper air of the same temperature always brings wood to more moisture', () => {
  fc.assert(
    fc.property(temperatures, humidities, humidities, (temperature, one, other) => {
      fc.pre(Math.abs(one - other) > 1e-6);
      const [low, high] = one < other ? [one, other] : [other, one];
      expect(equilibriumMoisture(temperature, low)).toBeLessThan(equilibriumMoisture(temperature, high));
    }),
  );
});

test('the humidity for a moisture leads back to that moisture, and from any air back to its humidity', () => {
  fc.assert(
    fc.property(temperatures, humidities, (temperature, humidity) => {
      const back = humidityForMoisture(temperature, equilibriumMoisture(temperature, humidity));
      if (isRefused(back)) throw new Error(back.refused);
      expect(Math.abs(back.humidity - humidity)).toBeLessThanOrEqual(2 * humidityTolerance);
    }),
  );
});

test('8 % moisture at 21.1 °C needs air between the printed 40 % (7.7) and 45 % (8.5)', () => {
  const { humidity } = humidityForMoisture(21.1, 8) as { humidity: number };
  expect(humidity).toBeGreaterThan(40);
  expect(humidity).toBeLessThan(45);
});

test('moisture content counts on the oven-dry mass: 1150 g wet over 1000 g dry is 15.0 % (eq. 4-2), not the 13.0 % of the wet mass', () => {
  expect(moistureFromMass.compute({ m: 1150, m_d: 1000 })).toBeCloseTo(15, 10);
});

describe('air outside the table gets a sentence instead of a number', () => {
  test.each([
    [20, 0, 'relative humidity'],
    [20, 100, 'relative humidity'],
    [20, 4.9, 'relative humidity'],
    [20, -5, 'relative humidity'],
    [20, Number.NaN, 'relative humidity'],
    [-2, 50, 'temperature'],
    [133, 50, 'temperature'],
    [Number.NaN, 50, 'temperature'],
    [Infinity, 50, 'temperature'],
  ])('%d °C and %d %%', (temperature, humidity, word) => {
    expect(moistureInAir(temperature, humidity)).toEqual({ refused: expect.stringContaining(word) });
  });

  test('the ends of the table are inside', () => {
    expect(moistureInAir(-1.1, 95)).toEqual({ moisture: expect.closeTo(24.3, 1) });
    expect(moistureInAir(132.2, 5)).toEqual({ moisture: expect.any(Number) });
  });

  test('a moisture that no tabulated air gives is refused, with the range that it could be', () => {
    // Table 4-2 at 70 °F runs from 1.3 to 23.9 %.
    for (const moisture of [0, 1, 24.5, 30, Number.NaN])
      expect(humidityForMoisture(21.1, moisture)).toEqual({
        refused: expect.stringContaining('1.3 and 23.9 %'),
      });
    expect(humidityForMoisture(-20, 8)).toEqual({ refused: expect.stringContaining('temperature') });
  });
});

// Table 4-2 is printed from 30 to 270 °F, both included: 30 °F is −1.11 °C, which no rounding may shut out.
test('air of 30 °F and of 270 °F has a figure, and a tenth of a degree beyond has none', () => {
  const at = (fahrenheit: number) => moistureInAir(((fahrenheit - 32) * 5) / 9, 50);
  const coldest = at(30);
  const printed = cells.find((cell) => cell.fahrenheit === 30 && cell.humidity === 50)!.printed;
  expect(isRefused(coldest) ? coldest.refused : Math.abs(coldest.moisture - printed)).toBeLessThan(0.1);
  expect(isRefused(humidityForMoisture(((30 - 32) * 5) / 9, printed))).toBe(false);
  expect(isRefused(at(270))).toBe(false);
  for (const beyond of [29.9, 270.1]) expect(isRefused(at(beyond)), `${beyond} °F`).toBe(true);
});
