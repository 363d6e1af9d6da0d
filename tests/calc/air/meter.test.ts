/** From a meter's reading to the humidity: against the other way to the same number, and against the published table. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readTable } from '../../../src/build/tables.ts';
import { humidityOfMoisture } from '../../../src/calc/air/meter.ts';
import { equilibriumMoisture } from '../../../src/calc/air/moisture.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { humidityForMoisture } from '../../reference/humidity-for-moisture.ts';

const humidityOf = (temperature: number, moisture: number): number => {
  const found = humidityOfMoisture(temperature, moisture);
  if (isRefused(found)) throw new Error(found.refused);
  return found.humidity;
};

test('the humidity agrees with that found by halving, for any air of the table', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1, max: 130, noNaN: true }),
      fc.double({ min: 5.01, max: 94.99, noNaN: true }),
      (temperature, humidity) => {
        const moisture = equilibriumMoisture(temperature, humidity);
        const other = humidityForMoisture(temperature, moisture);
        if (isRefused(other)) throw new Error(other.refused);
        expect(humidityOf(temperature, moisture)).toBeCloseTo(other.humidity, 5);
        expect(humidityOf(temperature, moisture)).toBeCloseTo(humidity, 5);
      },
    ),
  );
});

test('every cell of the printed table at 70 °F gives its humidity back, as near as its last digit tells', () => {
  const row = readTable('equilibrium-moisture-content').find(({ temperature_f }) => temperature_f === '70')!;
  const celsius = (70 - 32) / 1.8;
  for (let humidity = 10; humidity <= 90; humidity += 5) {
    const printed = (at: number) => Number(row[`emc_pct_at_rh_${at}`]);
    // The equation meets the table within 0.07 points: worth so much humidity where the table is steep or flat.
    const perPoint = 10 / (printed(humidity + 5) - printed(humidity - 5));
    expect(Math.abs(humidityOf(celsius, printed(humidity)) - humidity)).toBeLessThan(0.1 * perPoint);
  }
});

test('more moisture means damper air', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 40, noNaN: true }),
      // The table ends at 22.7 % where it is warm.
      fc.double({ min: 2, max: 21, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (temperature, moisture, more) => {
        expect(humidityOf(temperature, moisture + more)).toBeGreaterThan(humidityOf(temperature, moisture));
      },
    ),
  );
});

test.each([
  [20, 0.2],
  [20, 30],
  [20, Number.NaN],
  [200, 9],
  [Number.NaN, 9],
])('at %f °C a reading of %f %% is refused with the reason', (temperature, moisture) => {
  const found = humidityOfMoisture(temperature, moisture);
  expect(isRefused(found) && found.refused).toMatch(/table/);
});
