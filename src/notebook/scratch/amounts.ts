/** Units a cell may use, what kind of amount one is, and how it is written in both of the reader's units. */
import { format, INCH } from '../../units/index.ts';
import { type Amount, isAmount, math, type Value } from './math.ts';

/** By what a reader writes: what mathjs calls it. Other units of mathjs are left out: nobody should meet a "b" that is a bit. */
const units: ReadonlyMap<string, string> = new Map([
  ...(
    'mm cm m inch ft yd g kg oz lb lbf N kN Pa kPa MPa GPa psi s ms min hour day week deg rad degC degF K Hz kHz L ml'.split(
      ' ',
    ) as string[]
  ).map((name) => [name, name] as const),
  ['days', 'day'],
  ['hours', 'hour'],
  ['weeks', 'week'],
  ['inches', 'inch'],
  ['feet', 'ft'],
]);

export const unitNames: readonly string[] = [...units.keys()].map((name) => (name === 'inch' ? 'in' : name));

/** The unit of this name without a number. */
export const unitOf = (name: string): Amount | undefined => {
  const known = units.get(name);
  return known === undefined ? undefined : math.unit(known);
};

/** A number of a unit, written as mathjs writes units. */
export const amountOf = (value: number, unit: string): Amount =>
  math.multiply(value, math.unit(unit)) as Amount;

interface Kind {
  /** "a length" */
  readonly called: string;
  /** What a reader could type for one. */
  readonly example: string;
  /** Units it is written in, for a reader in millimeters and one in inches; small ones first, each with the least number of it. */
  readonly mm: readonly string[];
  readonly inch: readonly string[];
}

const kindRows: readonly Kind[] = [
  { called: 'a length', example: '5 mm or 3/16 in', mm: ['mm'], inch: ['in'] },
  { called: 'an area', example: '5 cm^2 or 2 in^2', mm: ['mm^2'], inch: ['in^2'] },
  { called: 'a volume', example: '5 cm^3 or 2 in^3', mm: ['mm^3', 'cm^3'], inch: ['in^3'] },
  { called: 'a mass', example: '350 g or 12 oz', mm: ['g'], inch: ['oz'] },
  { called: 'a force', example: '40 N or 9 lbf', mm: ['N'], inch: ['lbf'] },
  { called: 'a force per length', example: '2 N/mm or 11 lbf/in', mm: ['N/mm'], inch: ['lbf/in'] },
  { called: 'a stress', example: '5 MPa or 700 psi', mm: ['MPa'], inch: ['psi'] },
  { called: 'a moment', example: '5 N mm or 2 lbf in', mm: ['N mm'], inch: ['lbf in'] },
  { called: 'an angle', example: '30 deg', mm: ['deg'], inch: ['deg'] },
  { called: 'a temperature', example: '21 degC or 70 degF', mm: ['degC'], inch: ['degF'] },
  { called: 'a time', example: '14 days', mm: ['s', 'hour', 'day'], inch: ['s', 'hour', 'day'] },
  { called: 'a frequency', example: '440 Hz', mm: ['Hz'], inch: ['Hz'] },
  { called: 'a density', example: '600 kg/m^3', mm: ['kg/m^3'], inch: ['lb/ft^3'] },
  { called: 'a mass per area', example: '200 g/m^2', mm: ['g/m^2'], inch: ['oz/ft^2'] },
  { called: 'a length per time', example: '2 mm/day', mm: ['mm/day'], inch: ['in/day'] },
  { called: 'an area per time', example: '2 mm^2/day', mm: ['mm^2/day'], inch: ['in^2/day'] },
  { called: 'a time per length', example: '2 day/mm', mm: ['day/mm'], inch: ['day/in'] },
];
const kinds = kindRows.map((kind) => ({ ...kind, base: math.unit(kind.mm[0]!) }));

export const kindOf = (amount: Amount): Kind | undefined => kinds.find(({ base }) => base.equalBase(amount));

/** "a length", "a plain number", or the units themselves. */
export const calledAs = (value: Value): string =>
  !isAmount(value)
    ? typeof value === 'number'
      ? 'a plain number'
      : 'a yes or no'
    : (kindOf(value)?.called ?? `an amount in ${value.toSI().formatUnits()}`);

/** Degrees Celsius and Fahrenheit start from a zero of their own, so sums of them mean nothing. */
export const hasOwnZero = (value: Value): boolean =>
  isAmount(value) &&
  (value as unknown as { units: { unit: { offset: number } }[] }).units.some(({ unit }) => unit.offset !== 0);

/** A pure number that has lost its units, as a plain number. */
export const plainIfPure = (value: Value): Value =>
  isAmount(value) && value.dimensions.every((power) => Math.abs(power) < 1e-12)
    ? ((value.toSI().value as number | null) ?? 1)
    : value;

/** Five figures, without zeros at the end. */
export const inFigures = (value: number): string => {
  const figures = Math.abs(value) >= 1e4 && Math.abs(value) < 1e15 ? value.toFixed(0) : value.toPrecision(5);
  return String(Number(figures)).replace('-', '−');
};

const written = (unit: string) =>
  unit
    .replaceAll('inch', 'in')
    .replaceAll(' / ', '/')
    .replace(/\^(\d)/g, (_, power: string) => ({ 2: '²', 3: '³' })[power] ?? `^${power}`)
    .replace(/^deg$/, '°')
    .replace(/^deg([CF])$/, '°$1');
const joined = (value: number, unit: string) => {
  const said = written(unit);
  return `${inFigures(value)}${said === '°' ? '' : '\u00a0'}${said}`;
};

/** A length of a reader in inches: decimals, and the mark of the rule beside it where it lies between two. */
function inInches(mm: number): string {
  const inches = mm / INCH;
  const mark = format(mm, 'length', { system: 'inch', denominator: 64 });
  const onMark = Math.abs(inches * 64 - Math.round(inches * 64)) < 1e-6;
  if (onMark && Math.abs(inches) < 1000) return mark;
  const decimals = joined(Number(inches.toFixed(Math.abs(inches) < 0.01 ? 6 : 4)), 'in');
  return Math.abs(inches) < 1 / 64 || Math.abs(inches) >= 1000 ? decimals : `${decimals}, about ${mark}`;
}

/** The largest of some units of which there is at least one. */
const largest = (amount: Amount, of: readonly string[]) =>
  of.findLast((unit) => Math.abs(amount.toNumber(unit)) >= 1) ?? of[0]!;

/** A result as a reader sees it. */
export interface Shown {
  readonly mm: string;
  readonly inch: string;
  /** In the unit that was asked for by “to”, where that is another. */
  readonly asked?: string;
}

/** How a value is written, in both units. */
export function show(value: Value): Shown {
  const same = (text: string): Shown => ({ mm: text, inch: text });
  if (typeof value === 'boolean') return same(value ? 'yes' : 'no');
  if (typeof value === 'number') return same(inFigures(value));
  const kind = kindOf(value);
  if (!kind) {
    const plain = value.toSI();
    return same(joined(plain.toNumeric(plain.formatUnits()) as number, plain.formatUnits()));
  }
  const texts = { mm: '', inch: '' };
  for (const system of ['mm', 'inch'] as const) {
    const unit = largest(value, kind[system]);
    texts[system] = unit === 'in' ? inInches(value.toNumber('mm')) : joined(value.toNumber(unit), unit);
  }
  const wanted = value.formatUnits();
  if (!(value as unknown as { fixPrefix: boolean }).fixPrefix) return texts;
  if (kind.called === 'a length' && (wanted === 'mm' || wanted === 'inch'))
    return { ...texts, asked: wanted === 'mm' ? texts.mm : texts.inch };
  return { ...texts, asked: joined(value.toNumber(wanted), wanted) };
}
