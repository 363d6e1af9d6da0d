/**
 * A year of air from two readings of a hygrometer: a plain wave through both.
 *
 *   v(day) = m + a cos(2π (day − peak)/365)
 *
 * Symbols: v humidity (%) or temperature (°C), m its mean over the year, a half its swing, peak the day it is highest.
 * Held fixed: the day of the peak, which two readings cannot tell. Weather is left out: only the season remains.
 */
import { isRefused, type Refused } from '../core/refusal.ts';
import { DAYS_IN_YEAR, MID_MONTHS, refuseYear, type YearOfAir } from './year.ts';

/** What the instrument showed, best as the mean of a week. Day of the year 0 to 365, °C, %. */
export interface Reading {
  readonly day: number;
  readonly temperature: number;
  readonly humidity: number;
}

/** Days taken as dampest and warmest when the reader does not say: the end of July and the middle (common practice, northern half). */
export const PEAK_DAYS = { dampest: 210, warmest: 200 } as const;

const season = (day: number, peak: number) => Math.cos((2 * Math.PI * (day - peak)) / DAYS_IN_YEAR);

/** Twelve monthly values of a wave about `mean` that reaches `mean + half` on `peak`. A negative `half` puts the low there. */
export const monthlyWave = (mean: number, half: number, peak: number): number[] =>
  MID_MONTHS.map((day) => mean + half * season(day, peak));

/**
 * Mean and half swing of the wave through two readings `[day, value]`.
 * @returns a refusal when the two lie at nearly the same height of the wave, where any swing would fit them.
 */
export function waveThrough(
  [day1, value1]: readonly [number, number],
  [day2, value2]: readonly [number, number],
  peak: number,
): { readonly mean: number; readonly half: number } | Refused {
  const apart = season(day1, peak) - season(day2, peak);
  if (!(Math.abs(apart) >= 0.5)) {
    return {
      refused:
        'The two readings lie at nearly the same point of the yearly swing. Take them some months apart, best in the dampest and the driest month.',
    };
  }
  const half = (value1 - value2) / apart;
  return { mean: value1 - half * season(day1, peak), half };
}

/**
 * A year of air through two readings.
 * @returns a refusal when the readings are too near each other in season, or lead outside 1 to 100 % humidity.
 */
export function yearFromReadings(
  first: Reading,
  second: Reading,
  peaks: { readonly dampest: number; readonly warmest: number } = PEAK_DAYS,
): YearOfAir | Refused {
  const through = (of: 'humidity' | 'temperature', peak: number) =>
    waveThrough([first.day, first[of]], [second.day, second[of]], peak);
  const humidity = through('humidity', peaks.dampest);
  const temperature = through('temperature', peaks.warmest);
  if (isRefused(humidity)) return humidity;
  if (isRefused(temperature)) return temperature;
  const year = {
    humidity: monthlyWave(humidity.mean, humidity.half, peaks.dampest),
    temperature: monthlyWave(temperature.mean, temperature.half, peaks.warmest),
  };
  const bad = refuseYear(year);
  return bad ? { refused: `A wave through these readings goes too far. ${bad.refused}` } : year;
}
