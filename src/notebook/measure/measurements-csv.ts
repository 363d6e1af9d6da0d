/**
 * Measurements and weighings as CSV, for a spreadsheet, and back. The heading of a column says its unit, so a file of a
 * reader in inches comes back the same for one in millimeters. A row that cannot be used is refused by its number, with
 * the reason; the others are taken.
 * Over 150 lines: writing and reading go by one table of columns.
 */
import { csvFormatRows, dsvFormat } from 'd3-dsv';
import { INCH, type Kind, type Parsed, type UnitSystem } from '../../units/index.ts';
import { isMeasurement, isWeighing, type Measurement, type WeighingEntry } from './measurements.ts';

const ounce = 28.349523125;

/** Reads a number; handed in, since a page fetches it with the first number it needs. */
export type Read = (text: string, kind: Kind, system: UnitSystem) => Parsed;

interface Column {
  /** Key of the entry. */
  readonly key: string;
  readonly kind?: Kind;
  /** May be empty. */
  readonly optional?: true;
  readonly words: string;
}

const measured: readonly Column[] = [
  { key: 'box', words: 'the name of the box' },
  { key: 'date', words: 'a day like 2026-02-28' },
  { key: 'what', words: 'what was measured, like lid-play' },
  { key: 'measured', kind: 'length', words: 'a length from 0 to 2000 mm (78 in)' },
  { key: 'reading', kind: 'length', words: 'what the tool reads to, up to 5 mm (3/16 in)' },
  {
    key: 'temperature',
    kind: 'temperature',
    optional: true,
    words: 'a temperature from −1 to 50 °C (30 to 122 °F)',
  },
  { key: 'humidity', kind: 'percent', optional: true, words: 'a humidity from 5 to 95 %' },
  { key: 'meter', kind: 'percent', optional: true, words: 'a moisture from 0 to 30 %, or nothing' },
];
const weighed: readonly Column[] = [
  { key: 'piece', words: 'the name of the piece' },
  { key: 'date', words: 'a day like 2026-02-28' },
  { key: 'mass', kind: 'mass', words: 'a mass from 0.1 g to 20 kg (44 lb)' },
];

/** Unit in the heading of a column, by kind and system: how it is written, and how many stored ones it is. */
const unitsOf: Readonly<
  Record<string, Readonly<Record<UnitSystem, readonly [name: string, size: number, zero: number]>>>
> = {
  length: { mm: ['mm', 1, 0], inch: ['in', INCH, 0] },
  temperature: { mm: ['C', 1, 0], inch: ['F', 5 / 9, 32] },
  percent: { mm: ['%', 1, 0], inch: ['%', 1, 0] },
  mass: { mm: ['g', 1, 0], inch: ['oz', ounce, 0] },
};

const headOf = ({ key, kind }: Column, system: UnitSystem) =>
  kind ? `${key} ${unitsOf[kind]![system][0]}` : key;

function write(columns: readonly Column[], entries: readonly object[], system: UnitSystem): string {
  const cell = (entry: Record<string, unknown>, { key, kind }: Column) => {
    const value = entry[key];
    if (value === undefined) return '';
    if (!kind) return String(value);
    const [, size, zero] = unitsOf[kind]![system];
    // Never as "5e-7", which a reader of numbers does not take.
    return ((value as number) / size + zero).toFixed(9).replace(/\.?0+$/, '');
  };
  return csvFormatRows([
    columns.map((column) => headOf(column, system)),
    ...entries.map((entry) => columns.map((column) => cell(entry as Record<string, unknown>, column))),
  ]);
}

export interface ReadCsv<Entry> {
  readonly entries: readonly Entry[];
  /** Rows as a spreadsheet counts them, the heading being row 1. */
  readonly refused: readonly { readonly row: number; readonly why: string }[];
  /** Why nothing at all could be read. */
  readonly whole?: string;
}

/** Rows that are looked at, and characters of a file: far more than a notebook has. */
const mostRows = 20_000;
export const longestFile = 2_000_000;

function read<Entry>(
  columns: readonly Column[],
  text: string,
  parse: Read,
  isEntry: (value: unknown) => value is Entry,
): ReadCsv<Entry> {
  const nothing = (whole: string): ReadCsv<Entry> => ({ entries: [], refused: [], whole });
  if (text.length > longestFile) return nothing('This file is too large to hold measurements.');
  const [heading = ''] = text.split(/\r?\n/, 1);
  // Where the comma is for decimals, spreadsheets part columns by semicolons.
  const rows = dsvFormat(heading.includes(';') ? ';' : ',').parseRows(text.replace(/^\ufeff/, ''));
  const [heads = [], ...body] = rows;
  const names = heads.map((head) => head.trim().toLowerCase());
  const places = columns.map((column) => {
    const systems: readonly UnitSystem[] = ['mm', 'inch'];
    const system = systems.find((one) => names.includes(headOf(column, one).toLowerCase()));
    return {
      column,
      system: system ?? 'mm',
      at: system ? names.indexOf(headOf(column, system).toLowerCase()) : -1,
    };
  });
  const missing = places
    .filter(({ column, at }) => at < 0 && !column.optional)
    .map(({ column }) => headOf(column, 'mm'));
  if (missing.length > 0)
    return nothing(`The first row must name the columns. Not found: ${missing.join(', ')}.`);
  const entries: Entry[] = [];
  const refused: { row: number; why: string }[] = [];
  body.slice(0, mostRows).forEach((cells, index) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    const row = index + 2;
    const entry: Record<string, unknown> = {};
    for (const { column, system, at } of places) {
      const cell = cells[at]?.trim() ?? '';
      if (cell === '' && column.optional) continue;
      const number = column.kind && parse(cell, column.kind, system);
      if (cell === '' || (number && !number.ok)) {
        refused.push({
          row,
          why: `“${cell.slice(0, 30)}” stands under ${column.key}. Write ${column.words}.`,
        });
        return;
      }
      entry[column.key] = number ? number.ok && number.value : cell;
    }
    if (isEntry(entry)) entries.push(entry);
    else {
      // The first column whose value alone makes it no entry.
      const bad = columns.find(({ key, optional }) => {
        const good = columns === measured ? sampleMeasured : sampleWeighed;
        return !(optional && entry[key] === undefined) && !isEntry({ ...good, [key]: entry[key] });
      });
      refused.push({
        row,
        why: bad
          ? `${bad.key} should be ${bad.words}.`
          : 'It needs humidity and temperature, or the reading of a meter.',
      });
    }
  });
  if (body.length > mostRows) refused.push({ row: mostRows + 2, why: `Rows from here on are too many.` });
  return { entries, refused };
}

const sampleMeasured: Measurement = {
  box: 'a box',
  date: '2026-02-28',
  what: 'lid-play',
  measured: 1,
  reading: 0.1,
  temperature: 20,
  humidity: 50,
};
const sampleWeighed: WeighingEntry = { piece: 'a piece', date: '2026-02-28', mass: 100 };

export const measurementsCsv = (entries: readonly Measurement[], system: UnitSystem) =>
  write(measured, entries, system);
export const weighingsCsv = (entries: readonly WeighingEntry[], system: UnitSystem) =>
  write(weighed, entries, system);
export const readMeasurementsCsv = (text: string, parse: Read) => read(measured, text, parse, isMeasurement);
export const readWeighingsCsv = (text: string, parse: Read) => read(weighed, text, parse, isWeighing);
