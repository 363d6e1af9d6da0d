/** Damp air against ASHRAE's formulas as psychrolib codes them, and against the check values of physics note B1. */
import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { expect, test } from 'vitest';
import {
  dewPointOf,
  humidityOnceHeated,
  humidityRatio,
  SEA_LEVEL,
  saturationPressure,
} from '../../../src/calc/air/air.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

// Computed with psychrolib 1.1.1 and confirmed by an independent program, at 101 325 Pa.
test.each([
  [-10, 259.903],
  [5, 872.487],
  [20, 2338.8],
  [30, 4246.03],
])('air at %d °C can hold %d Pa of vapor', (celsius, pascals) => {
  expect(saturationPressure(celsius)).toBeCloseTo(pascals, celsius < 20 ? 3 : 2);
});

test('saturation pressure agrees with psychrolib from -60 to 80 °C, over ice and water', () => {
  fc.assert(
    fc.property(fc.double({ min: -60, max: 80, noNaN: true }), (celsius) => {
      const expected = psychrolib.GetSatVapPres(celsius);
      expect(Math.abs(saturationPressure(celsius) / expected - 1)).toBeLessThan(1e-9);
    }),
  );
});

test.each([
  [20, 50, 0.00726174],
  [25, 60, 0.011895],
])('air at %d °C and %d percent carries %d kg of water per kg', (celsius, humidity, ratio) => {
  const p_w = (humidity / 100) * saturationPressure(celsius);
  expect(humidityRatio.compute({ p_w, p: SEA_LEVEL })).toBeCloseTo(ratio, 7);
});

// Outdoor air, heated, nothing added (physics note B1; the first row also from humidity ratio 0.00197914).
test.each([
  [-5, 80, 21, 12.9],
  [0, 85, 21, 20.9],
  [5, 85, 21, 29.8],
  [10, 80, 21, 39.5],
  [20, 75, 22, 66.3],
])(
  'outdoor air at %d °C and %d percent, heated to %d °C, drops to %d percent',
  (temperature, humidity, indoor, expected) => {
    expect(humidityOnceHeated({ temperature, humidity }, indoor)).toBeCloseTo(expected, 1);
  },
);

test('water added indoors raises the humidity above the lower bound, and never past 100 %', () => {
  const cold = { temperature: 0, humidity: 85 };
  const dry = humidityOnceHeated(cold, 21) as number;
  // 1 g/m³ at 21 °C against a saturated 18.3 g/m³ (any steam table): 5.5 points.
  expect((humidityOnceHeated(cold, 21, 1) as number) - dry).toBeCloseTo(5.5, 1);
  expect(isRefused(humidityOnceHeated({ temperature: 21, humidity: 95 }, 21, 5))).toBe(true);
});

test('the dew point found by halving agrees with psychrolib, and is 9.27 °C for 20 °C and 50 %', () => {
  // Physics note B1: 9.272 °C.
  expect(dewPointOf(0.5 * saturationPressure(20))).toBeCloseTo(9.272, 2);
  fc.assert(
    fc.property(
      fc.double({ min: -20, max: 45, noNaN: true }),
      fc.double({ min: 5, max: 100, noNaN: true }),
      (dryBulb, humidity) => {
        const vaporPressure = (humidity / 100) * psychrolib.GetSatVapPres(dryBulb);
        const dewPoint = psychrolib.GetTDewPointFromVapPres(dryBulb, vaporPressure);
        expect(Math.abs(dewPointOf(vaporPressure) - dewPoint)).toBeLessThan(0.01);
      },
    ),
  );
});
