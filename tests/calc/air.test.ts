/** Damp air against ASHRAE's formulas as psychrolib codes them, and against the check values of physics note B1. */
import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import {
  dewPointOf,
  humidityOnceHeated,
  humidityRatio,
  SEA_LEVEL,
  saturationPressure,
} from '../../src/calc/air.ts';
import { type AirReadings, type AirState, airState } from '../../src/calc/air-state.ts';
import { isRefused } from '../../src/calc/refusal.ts';

const known = (readings: AirReadings) => {
  const state = airState(readings);
  if (isRefused(state)) throw new Error(state.refused);
  return state;
};

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
  expect(known({ dryBulb: celsius, humidity }).humidityRatio).toBeCloseTo(ratio, 7);
});

test('the dew point of 20 °C and 50 % is 9.272 °C', () => {
  expect(known({ dryBulb: 20, humidity: 50 }).dewPoint).toBeCloseTo(9.272, 2);
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

describe('any two of dry bulb, humidity, wet bulb and dew point give the other two', () => {
  const pairs: (readonly [keyof AirReadings, keyof AirReadings])[] = [
    ['dryBulb', 'wetBulb'],
    ['dryBulb', 'dewPoint'],
    ['humidity', 'wetBulb'],
    ['humidity', 'dewPoint'],
    ['wetBulb', 'dewPoint'],
  ];
  test.each(pairs)('%s and %s', (one, other) => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 40, noNaN: true }),
        fc.double({ min: 15, max: 95, noNaN: true }),
        (dryBulb, humidity) => {
          const expected = known({ dryBulb, humidity });
          // Below freezing psychrolib's wet bulb jumps between ice and water; those few are no test of the pair.
          if (expected.wetBulb < 0.05 || Math.abs(expected.dewPoint) < 0.05) return;
          const found = known({ [one]: expected[one], [other]: expected[other] } as AirReadings);
          for (const name of ['dryBulb', 'wetBulb', 'dewPoint'] satisfies (keyof AirState)[]) {
            expect(Math.abs(found[name] - expected[name])).toBeLessThan(0.1);
          }
          expect(Math.abs(found.humidity - humidity)).toBeLessThan(0.3);
        },
      ),
      { numRuns: 200 },
    );
  });
});

test('saturated air has one temperature for all three thermometers', () => {
  const { wetBulb, dewPoint } = known({ dryBulb: 18, humidity: 100 });
  expect(wetBulb).toBeCloseTo(18, 2);
  expect(dewPoint).toBeCloseTo(18, 2);
});

test.each<[string, AirReadings, RegExp]>([
  ['a dew point above the air', { dryBulb: 20, dewPoint: 21 }, /dew point \(21 °C\) cannot be warmer/],
  ['a wet bulb above the air', { dryBulb: 20, wetBulb: 20.5 }, /wet bulb \(20.5 °C\) cannot be warmer/],
  ['a wet bulb colder than dry air makes it', { dryBulb: 20, wetBulb: 2 }, /perfectly dry air at 20 °C/],
  ['a dew point above the wet bulb', { wetBulb: 12, dewPoint: 14 }, /cannot be above the wet bulb/],
  ['a humidity of 0', { dryBulb: 20, humidity: 0 }, /humidity is 0 %/],
  ['a humidity above 100', { dryBulb: 20, humidity: 101 }, /humidity is 101 %/],
  ['a temperature beyond the formulas', { dryBulb: 300, humidity: 50 }, /air temperature is 300 °C/],
  ['not a number', { dryBulb: Number.NaN, humidity: 50 }, /not a number/],
  ['a single reading', { dryBulb: 20 }, /Two readings are needed.* 1\./],
  ['three readings', { dryBulb: 20, humidity: 50, dewPoint: 9 }, /Two readings are needed.* 3\./],
  ['two readings of air too hot to stand in', { dewPoint: 45, humidity: 1 }, /hotter than 60 °C/],
])('%s is refused by name', (_, readings, sentence) => {
  expect(airState(readings)).toEqual({ refused: expect.stringMatching(sentence) });
});

test('the dew point found by halving agrees with psychrolib, and is 9.27 °C for 20 °C and 50 %', () => {
  // Physics note B1: 9.272 °C.
  expect(dewPointOf(0.5 * saturationPressure(20))).toBeCloseTo(9.272, 2);
  fc.assert(
    fc.property(
      fc.double({ min: -20, max: 45, noNaN: true }),
      fc.double({ min: 5, max: 100, noNaN: true }),
      (dryBulb, humidity) => {
        const { dewPoint, vaporPressure } = known({ dryBulb, humidity });
        expect(Math.abs(dewPointOf(vaporPressure) - dewPoint)).toBeLessThan(0.01);
      },
    ),
  );
});
