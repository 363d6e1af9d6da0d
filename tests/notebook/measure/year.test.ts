/** The reader's year: where it comes from, what is kept, and what damage does to it. */
import { afterEach, expect, test } from 'vitest';
import { climates } from '../../../src/calc/air/climates.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import {
  chooseYear,
  editMonth,
  firstYear,
  readYear,
  yearChoice,
  yearOf,
} from '../../../src/notebook/measure/year.ts';

const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
const air = { temperature: 20, humidityDry: 30, humidityDamp: 60 };
afterEach(() => {
  yearChoice.value = firstYear;
});

test('starts as a kind of climate, and turns over for the southern half of the globe', () => {
  expect(yearOf(firstYear, air)).toBe(climates[0]!.year);
  const south = known(yearOf({ ...firstYear, south: true }, air));
  expect(south.humidity[0]).toBe(climates[0]!.year.humidity[6]);
});

test('from the air of the box is a wave between its driest and dampest, whichever is named first', () => {
  for (const box of [air, { ...air, humidityDry: 60, humidityDamp: 30 }]) {
    const { humidity, temperature } = known(yearOf({ ...firstYear, from: 'box' }, box));
    // Dampest at the end of July: its month and the one half a year off come within a point of the ends.
    expect(Math.max(...humidity)).toBeCloseTo(60, 0);
    expect(Math.min(...humidity)).toBeCloseTo(30, 0);
    expect(humidity.indexOf(Math.max(...humidity))).toBe(6);
    expect(new Set(temperature)).toEqual(new Set([20]));
  }
});

test('moving a month starts from the year on screen, and the kind of climate stays as it was', () => {
  editMonth(yearOf(firstYear, air), 2, 55);
  expect(yearChoice.value.from).toBe('months');
  const { humidity } = known(yearOf(yearChoice.value, air));
  expect(humidity[2]).toBe(55);
  expect(humidity[3]).toBe(climates[0]!.year.humidity[3]);
  expect(climates[0]!.year.humidity[2]).not.toBe(55);
  chooseYear({ from: 'heated-winter' });
  expect(yearOf(yearChoice.value, air)).toBe(climates[0]!.year);
  chooseYear({ from: 'months' });
  expect(known(yearOf(yearChoice.value, air)).humidity[2]).toBe(55);
});

test('two readings in one season say what is wrong', () => {
  const readings = [
    { day: 100, temperature: 20, humidity: 40 },
    { day: 110, temperature: 20, humidity: 44 },
  ] as const;
  expect(yearOf({ ...firstYear, from: 'readings', readings }, air)).toEqual({
    refused: expect.stringMatching(/some months apart/),
  });
});

test('what was kept comes back, and what is damaged comes back as at the start, part by part', () => {
  const chosen = { ...firstYear, from: 'unheated', built: 200, south: true };
  expect(readYear(JSON.stringify(chosen))).toEqual(chosen);
  expect(readYear(JSON.stringify({ ...chosen, months: { humidity: [1, 2] }, built: 400 }))).toEqual({
    ...chosen,
    months: firstYear.months,
    built: firstYear.built,
  });
  expect(readYear(JSON.stringify({ ...chosen, from: 'nowhere' })).from).toBe(firstYear.from);
  for (const text of ['', '{', 'null', '3', '[]', '{"readings":[{"day":1}]}'])
    expect(readYear(text)).toEqual(firstYear);
});
