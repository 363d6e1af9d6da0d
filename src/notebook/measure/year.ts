/** The year of air that the reader looks at, and the day a box is built: one signal for all figures, kept on the device. */
import { signal } from '@preact/signals';
import { climates } from '../../calc/air/climates.ts';
import { halfYearLater, type YearOfAir } from '../../calc/air/year.ts';
import { monthlyWave, PEAK_DAYS, type Reading, yearFromReadings } from '../../calc/air/year-from-readings.ts';
import { isRefused, type Refused } from '../../calc/core/refusal.ts';
import { readKept } from '../aside.ts';
import { save } from '../storage.ts';

/** Kinds of indoor climate to start from. */
export const kindsOfClimate = climates.filter((each) => each.where === 'indoors');

/** Where the year comes from: a kind of climate by id, the reader's own months, two readings, or the air given for the box. */
export type YearFrom = 'months' | 'readings' | 'box' | (string & {});

/** What the reader chose. Each way keeps its own numbers, so that trying another loses nothing. */
export interface YearChoice {
  readonly from: YearFrom;
  /** Seasons of the southern half of the globe; the reader's own months stay as they are. */
  readonly south: boolean;
  /** Own humidity by month, %; temperature by month, °C. */
  readonly months: YearOfAir;
  readonly readings: readonly [Reading, Reading];
  /** Day of building, 0 to 364. */
  readonly built: number;
}

export const firstYear: YearChoice = {
  from: 'heated-winter',
  south: false,
  months: climates[0]!.year,
  readings: [
    { day: 25, temperature: 20, humidity: 31 },
    { day: 205, temperature: 24, humidity: 57 },
  ],
  built: 45,
};

export const yearChoice = signal<YearChoice>(firstYear);
const key = 'year';
let awake = false;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const isTwelve = (value: unknown) => Array.isArray(value) && value.length === 12 && value.every(isNumber);
const isReading = (value: Partial<Reading> | undefined) =>
  isNumber(value?.day) && isNumber(value.temperature) && isNumber(value.humidity);
const readingOf = ({ day, temperature, humidity }: Reading): Reading => ({ day, temperature, humidity });
const isFrom = (value: unknown) =>
  ['months', 'readings', 'box'].includes(value as string) || kindsOfClimate.some(({ id }) => id === value);

/** What was kept, part by part; a part that cannot be read is as at the start. */
export function readYear(text: string): YearChoice {
  try {
    const kept = (JSON.parse(text) ?? {}) as Partial<YearChoice>;
    const { from, south, months, readings, built } = kept;
    return {
      from: isFrom(from) ? from! : firstYear.from,
      south: south === true,
      months:
        isTwelve(months?.humidity) && isTwelve(months?.temperature)
          ? { temperature: months!.temperature, humidity: months!.humidity }
          : firstYear.months,
      readings:
        isReading(readings?.[0]) && isReading(readings?.[1])
          ? [readingOf(readings![0]), readingOf(readings![1])]
          : firstYear.readings,
      built: isNumber(built) && built >= 0 && built <= 364 ? Math.round(built) : firstYear.built,
    };
  } catch {
    return firstYear;
  }
}

/** Loads the year kept on this device, once. */
export function loadYear(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  yearChoice.value = readKept(key, 'year of air', (text) => readYear(text ?? '{}'));
}

/** Changes the choice and keeps it. */
export function chooseYear(part: Partial<YearChoice>): void {
  yearChoice.value = { ...yearChoice.value, ...part };
  save(key, JSON.stringify(yearChoice.value));
}

/** The air of the box: temperature in °C, humidity at its driest and dampest in %. */
export interface BoxAir {
  readonly temperature: number;
  readonly humidityDry: number;
  readonly humidityDamp: number;
}

/** The twelve months of a choice, or why there are none. */
export function yearOf({ from, south, months, readings }: YearChoice, air: BoxAir): YearOfAir | Refused {
  const turned = (year: YearOfAir) => (south ? halfYearLater(year) : year);
  const half = south ? 182 : 0;
  if (from === 'months') return months;
  if (from === 'readings')
    return yearFromReadings(readings[0], readings[1], {
      dampest: PEAK_DAYS.dampest + half,
      warmest: PEAK_DAYS.warmest + half,
    });
  if (from === 'box') {
    const [dry, damp] = [air.humidityDry, air.humidityDamp];
    return turned({
      temperature: Array<number>(12).fill(air.temperature),
      humidity: monthlyWave((dry + damp) / 2, Math.abs(damp - dry) / 2, PEAK_DAYS.dampest),
    });
  }
  return turned((kindsOfClimate.find(({ id }) => id === from) ?? kindsOfClimate[0]!).year);
}

/** Puts a month of the reader's own in place, starting from the year that is shown. */
export function editMonth(shown: YearOfAir | Refused, month: number, humidity: number): void {
  const year = isRefused(shown) ? yearChoice.value.months : shown;
  chooseYear({ from: 'months', months: { ...year, humidity: year.humidity.with(month, humidity) } });
}
