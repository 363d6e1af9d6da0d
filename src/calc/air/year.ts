/**
 * A year of air as twelve months of temperature and humidity, and the smooth curve through them.
 *
 * The curve is a periodic cubic in each stretch from one mid-month to the next, with the slopes of Fritsch and
 * Butland (the weighted harmonic mean of the neighboring slopes, zero at a peak). So it is smooth across New
 * Year, passes through each month's value at mid-month, and never leaves the range of its two neighbors: no
 * humidity below the driest month or above the dampest. The mean over a month may differ a little from its value.
 *
 * Days run from 0 (start of 1 January) to 365; other days wrap around.
 */

import { firstRefusal, isRefused, type Refused } from '../core/refusal.ts';
import { equilibriumMoisture, moistureInAir } from './moisture.ts';

export const DAYS_IN_YEAR = 365;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/** Names of the months, January first. */
export const MONTHS: readonly string[] =
  'January February March April May June July August September October November December'.split(' ');

/** Middle of each month, in days from 1 January. */
export const MID_MONTHS: readonly number[] = MONTH_DAYS.map(
  (days, month) => MONTH_DAYS.slice(0, month).reduce((sum, each) => sum + each, 0) + days / 2,
);

/** A day of the year in words: 0 is "1 January". Other days wrap around; fractions count to the day begun. */
export function dateOf(day: number): string {
  let left = Math.floor(((day % DAYS_IN_YEAR) + DAYS_IN_YEAR) % DAYS_IN_YEAR);
  const month = MONTH_DAYS.findIndex((days) => {
    if (left < days) return true;
    left -= days;
    return false;
  });
  return `${left + 1} ${MONTHS[month]}`;
}

/** Twelve values from January to December: °C and % relative humidity. */
export interface YearOfAir {
  readonly temperature: readonly number[];
  readonly humidity: readonly number[];
}

/** Smooth periodic curve through twelve monthly values; see the head of this file. */
export function curveThrough(monthly: readonly number[]): (day: number) => number {
  const gap = (i: number) => (MID_MONTHS[(i + 1) % 12]! - MID_MONTHS[i % 12]! + DAYS_IN_YEAR) % DAYS_IN_YEAR;
  const rise = (i: number) => (monthly[(i + 1) % 12]! - monthly[i % 12]!) / gap(i);
  const slopes = monthly.map((_, i) => {
    const [before, after] = [rise(i + 11), rise(i)];
    if (before * after <= 0) return 0;
    const [long, short] = [gap(i + 11) + 2 * gap(i), 2 * gap(i + 11) + gap(i)];
    return (long + short) / (long / after + short / before);
  });
  return (day) => {
    const inYear = ((day % DAYS_IN_YEAR) + DAYS_IN_YEAR) % DAYS_IN_YEAR;
    let i = 11;
    if (inYear >= MID_MONTHS[0]!) {
      i = Math.min(11, Math.floor(inYear / 30.4));
      if (inYear < MID_MONTHS[i]!) i--;
      else if (i < 11 && inYear >= MID_MONTHS[i + 1]!) i++;
    }
    const [from, to, length] = [monthly[i]!, monthly[(i + 1) % 12]!, gap(i)];
    const x = ((inYear - MID_MONTHS[i]! + DAYS_IN_YEAR) % DAYS_IN_YEAR) / length;
    const left = 1 - x;
    return (
      left * left * ((1 + 2 * x) * from + x * length * slopes[i]!) +
      x * x * ((1 + 2 * left) * to - left * length * slopes[(i + 1) % 12]!)
    );
  };
}

/** Refuses a year that is not twelve months of air between -50 and 50 °C and 1 and 100 %; names the month. */
export function refuseYear({ temperature, humidity }: YearOfAir): Refused | undefined {
  if (temperature.length !== 12 || humidity.length !== 12) return { refused: 'A year needs twelve months.' };
  return firstRefusal(
    ...temperature.map((value, i) => [`temperature in ${MONTHS[i]}`, value, -50, 50, ' °C'] as const),
    ...humidity.map((value, i) => [`humidity in ${MONTHS[i]}`, value, 1, 100, ' %'] as const),
  );
}

/**
 * Moisture content (%) that wood would settle at in the air of each day.
 * @returns a refusal, naming the month, where the sorption table does not reach (5 to 95 %, from -1.1 °C up).
 */
export function moistureThrough(year: YearOfAir): ((day: number) => number) | Refused {
  const bad = refuseYear(year);
  if (bad) return bad;
  for (const [i, humidity] of year.humidity.entries()) {
    const month = moistureInAir(year.temperature[i]!, humidity);
    if (isRefused(month)) return { refused: `${MONTHS[i]}: ${month.refused}` };
  }
  const temperature = curveThrough(year.temperature);
  const humidity = curveThrough(year.humidity);
  return (day) => equilibriumMoisture(temperature(day), humidity(day));
}

/** The same climate on the other half of the globe: six months later. */
export const halfYearLater = ({ temperature, humidity }: YearOfAir): YearOfAir => ({
  temperature: [...temperature.slice(6), ...temperature.slice(0, 6)],
  humidity: [...humidity.slice(6), ...humidity.slice(0, 6)],
});
