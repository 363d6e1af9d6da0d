/**
 * What the reader measured on a box, season by season, and series of weighings: kept on the device, the same in every tab.
 * Only what was read off a tool is kept. What was predicted is worked out from the box when it is shown.
 * Over 150 lines: both series stand in one text of the store.
 */
import { signal } from '@preact/signals';
import { readKept } from '../aside.ts';
import { onOtherTab, save } from '../storage.ts';
import { dayNumber } from './calendar.ts';

/** One reading of a tool on one day. Lengths in mm, °C, %. */
export interface Measurement {
  /** Name of the box. */
  readonly box: string;
  /** 2026-02-28 */
  readonly date: string;
  /** What was measured; see `measurables`. */
  readonly what: string;
  readonly measured: number;
  /** What the tool reads to. */
  readonly reading: number;
  /** Air of the day, both or none; without it a meter's reading stands. */
  readonly temperature?: number;
  readonly humidity?: number;
  /** Moisture of the wood by a meter, %. */
  readonly meter?: number;
}

/** One weighing of a piece. g; thickness mm. */
export interface WeighingEntry {
  /** Name of the piece. */
  readonly piece: string;
  readonly date: string;
  readonly mass: number;
}

/** What is known of a piece that is weighed. */
export interface Piece {
  /** mm */
  readonly thickness: number;
  /** What the scale reads to, g. */
  readonly reading: number;
  /** Oven-dry mass, g. */
  readonly dry?: number;
}

/** More than one a day for five years; the oldest go first. */
const mostEntries = 2000;
export const longestName = 60;

/** Limits of what may be kept, in stored units; a number outside them is a slip of the pen. */
export const limits = {
  measured: [0, 2000],
  reading: [0.001, 5],
  temperature: [-1, 50],
  humidity: [5, 95],
  meter: [0, 30],
  mass: [0.1, 20_000],
  thickness: [1, 150],
  scale: [0.001, 100],
} as const;

const within = (value: unknown, [low, high]: readonly [number, number]): value is number =>
  typeof value === 'number' && value >= low && value <= high;
const isName = (value: unknown): value is string =>
  typeof value === 'string' && value.trim() !== '' && value.length <= longestName;
const isDate = (value: unknown): value is string =>
  typeof value === 'string' && dayNumber(value) !== undefined;
type Claim<T> = Partial<Record<keyof T, unknown>>;

export function isMeasurement(value: unknown): value is Measurement {
  const one = (value ?? {}) as Claim<Measurement>;
  return (
    isName(one.box) &&
    isDate(one.date) &&
    isName(one.what) &&
    within(one.measured, limits.measured) &&
    within(one.reading, limits.reading) &&
    (one.temperature === undefined || within(one.temperature, limits.temperature)) &&
    (one.humidity === undefined || within(one.humidity, limits.humidity)) &&
    (one.meter === undefined
      ? one.temperature !== undefined && one.humidity !== undefined
      : within(one.meter, limits.meter))
  );
}

export function isWeighing(value: unknown): value is WeighingEntry {
  const one = (value ?? {}) as Claim<WeighingEntry>;
  return isName(one.piece) && isDate(one.date) && within(one.mass, limits.mass);
}

const isPiece = (value: unknown): value is Piece => {
  const one = (value ?? {}) as Claim<Piece>;
  return (
    within(one.thickness, limits.thickness) &&
    within(one.reading, limits.scale) &&
    (one.dry === undefined || within(one.dry, limits.mass))
  );
};

export interface KeptMeasurements {
  readonly measurements: readonly Measurement[];
  readonly weighings: readonly WeighingEntry[];
  readonly pieces: Readonly<Record<string, Piece>>;
}

const none: KeptMeasurements = { measurements: [], weighings: [], pieces: {} };
const key = 'measurements';

/** By day, each entry once; a second weighing of a piece on the same day takes the place of the first. */
function inOrder({ measurements, weighings, pieces }: KeptMeasurements): KeptMeasurements {
  const byDay = <T extends { date: string }>(all: Iterable<T>) =>
    [...all].sort((a, b) => a.date.localeCompare(b.date)).slice(-mostEntries);
  const once = <T>(all: readonly T[], name: (one: T) => unknown) =>
    new Map(all.map((one) => [JSON.stringify(name(one)), one])).values();
  return {
    measurements: byDay(
      once(measurements, (one) => [
        one.box,
        one.date,
        one.what,
        one.measured,
        one.reading,
        one.temperature,
        one.humidity,
        one.meter,
      ]),
    ),
    weighings: byDay(once(weighings, ({ piece, date }) => [piece, date])),
    pieces,
  };
}

/** What a text that claims to hold measurements holds; what cannot be read is dropped. */
export function readMeasurements(text: string | undefined): KeptMeasurements {
  try {
    const { measurements, weighings, pieces } = (JSON.parse(text ?? '{}') ?? {}) as Claim<KeptMeasurements>;
    return inOrder({
      measurements: Array.isArray(measurements) ? measurements.filter(isMeasurement) : [],
      weighings: Array.isArray(weighings) ? weighings.filter(isWeighing) : [],
      pieces: Object.fromEntries(
        Object.entries((pieces ?? {}) as object).filter(([name, piece]) => isName(name) && isPiece(piece)),
      ),
    });
  } catch {
    return none;
  }
}

export const kept = signal<KeptMeasurements>(none);
let awake = false;

/** Reads what is kept, and follows other tabs from then on. */
export function loadMeasurements(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  kept.value = readKept(key, 'measurements', readMeasurements);
  onOtherTab(key, (text) => {
    kept.value = readMeasurements(text);
  });
}

/** Puts all of it in place, and keeps it. */
function putMeasurements(all: KeptMeasurements): void {
  kept.value = inOrder(all);
  save(key, JSON.stringify(kept.value));
}

export function addMeasurements(added: readonly Measurement[]): void {
  putMeasurements({ ...kept.value, measurements: [...kept.value.measurements, ...added] });
}

export function takeMeasurement(taken: Measurement): void {
  putMeasurements({ ...kept.value, measurements: kept.value.measurements.filter((one) => one !== taken) });
}

export function addWeighings(added: readonly WeighingEntry[]): void {
  putMeasurements({ ...kept.value, weighings: [...kept.value.weighings, ...added] });
}

export function takeWeighing(taken: WeighingEntry): void {
  putMeasurements({ ...kept.value, weighings: kept.value.weighings.filter((one) => one !== taken) });
}

/** Entries of two devices together. What is known of a piece, and its weight on a day, stays as it is on this one. */
export function mergeMeasured(own: string, other: string): string {
  const [mine, theirs] = [readMeasurements(own), readMeasurements(other)];
  return JSON.stringify(
    inOrder({
      measurements: [...theirs.measurements, ...mine.measurements],
      weighings: [...theirs.weighings, ...mine.weighings],
      pieces: { ...theirs.pieces, ...mine.pieces },
    }),
  );
}

/** What is known of a piece; a scale that reads grams, and stock of half an inch, until it is said. */
const firstPiece: Piece = { thickness: 12, reading: 0.1 };
export const pieceOf = (name: string): Piece => kept.value.pieces[name] ?? firstPiece;

export function describePiece(name: string, known: Piece): void {
  putMeasurements({ ...kept.value, pieces: { ...kept.value.pieces, [name]: known } });
}
