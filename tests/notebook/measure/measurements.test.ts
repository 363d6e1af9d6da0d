/** What is measured and weighed: kept, brought together, and written as CSV and back in both units. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, dayText } from '../../../src/notebook/measure/calendar.ts';
import {
  limits,
  type Measurement,
  mergeMeasured,
  readMeasurements,
} from '../../../src/notebook/measure/measurements.ts';
import {
  measurementsCsv,
  readMeasurementsCsv,
  readWeighingsCsv,
} from '../../../src/notebook/measure/measurements-csv.ts';
import { parse } from '../../../src/units/parse.ts';

const inside = ([min, max]: readonly [number, number]) => fc.double({ min, max, noNaN: true });
const date = fc.integer({ min: 0, max: 40_000 }).map(dayText);
const name = fc.string({ minLength: 1, maxLength: 20 }).filter((text) => text.trim() === text && text !== '');
const base = { box: name, date, what: fc.constantFrom('lid-play', 'wall-height') };
const lengths = { measured: inside([0, 1990]), reading: inside([0.01, 4.9]) };
const measurement: fc.Arbitrary<Measurement> = fc.oneof(
  fc.record({ ...base, ...lengths, temperature: inside([0, 49]), humidity: inside([6, 94]) }),
  fc.record({ ...base, ...lengths, meter: inside([1, 29]) }),
);

describe('a CSV of measurements', () => {
  test('comes back the same, whichever units it was written in', () => {
    fc.assert(
      fc.property(fc.array(measurement, { maxLength: 5 }), fc.constantFrom('mm', 'inch'), (all, system) => {
        const { entries, refused } = readMeasurementsCsv(measurementsCsv(all, system), parse);
        expect(refused).toEqual([]);
        expect(entries.length).toBe(all.length);
        entries.forEach((entry, at) => {
          expect(entry.box).toBe(all[at]!.box);
          for (const key of ['measured', 'reading', 'temperature', 'humidity', 'meter'] as const)
            if (all[at]![key] === undefined) expect(entry[key]).toBeUndefined();
            else expect(entry[key]).toBeCloseTo(all[at]![key]!, 3);
        });
      }),
    );
  });

  test('refuses a row by its number in clear words, and takes the others', () => {
    const found = readMeasurementsCsv(
      [
        'box,date,what,measured mm,reading mm,temperature C,humidity %',
        'Tea box,2026-02-28,lid-play,1.2,0.1,20,45',
        'Tea box,2026-02-30,lid-play,1.2,0.1,20,45',
        'Tea box,2026-03-01,lid-play,much,0.1,20,45',
        'Tea box,2026-03-01,lid-play,1.2,0.1,20,',
      ].join('\n'),
      parse,
    );
    expect(found.entries).toHaveLength(1);
    expect(found.refused.map(({ row }) => row)).toEqual([3, 4, 5]);
    expect(found.refused[0]!.why).toContain('a day like 2026-02-28');
    expect(found.refused[1]!.why).toContain('“much” stands under measured');
    expect(found.refused[2]!.why).toContain('or the reading of a meter');
  });

  test('with semicolons and decimal commas is read, and one without the columns is refused as a whole', () => {
    const found = readWeighingsCsv('piece;date;mass oz\noffcut;2026-02-28;10,5\n', parse);
    // 10.5 oz of 28.349523125 g.
    expect(found.entries[0]?.mass).toBeCloseTo(297.67, 2);
    expect(readWeighingsCsv('a,b\n1,2\n', parse).whole).toContain('Not found: piece, date, mass g');
  });
});

test('what cannot be read is dropped, and the entries of two devices come together once', () => {
  const one = { box: 'b', date: '2026-02-28', what: 'lid-play', measured: 1, reading: 0.1, meter: 8 };
  const two = { ...one, date: '2026-05-28' };
  const text = (...measurements: object[]) => JSON.stringify({ measurements });
  expect(readMeasurements(text(one, { ...one, measured: limits.measured[1] + 1 }, {})).measurements).toEqual([
    one,
  ]);
  expect(readMeasurements('no JSON').measurements).toEqual([]);
  expect(readMeasurements(mergeMeasured(text(one), text(two, one))).measurements).toEqual([one, two]);
});

test('a day is one of the calendar: leap years are, 30 February is not', () => {
  expect(dayNumber('2024-02-29')).toBe(19_782);
  expect(dayNumber('2026-02-30')).toBeUndefined();
  expect(dayNumber('yesterday')).toBeUndefined();
});
