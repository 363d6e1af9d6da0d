/**
 * The kinds of number the site shows, and the units each is stored, written and read in.
 *
 * One value has one stored unit, whatever the reader prefers: mm, mm², mm³, °C, g, N, N/mm, MPa,
 * percent from 0 to 100, degrees, days. Units only decide how it is written, so a change of units
 * cannot move a value.
 *
 * Exact by definition: 1 in = 25.4 mm and 1 lb = 453.59237 g (international yard and pound, 1959),
 * standard gravity 9.80665 m/s², hence 1 lbf = 4.4482216152605 N (NIST SP 811, appendix B).
 * Longer than most files here, because it is one table.
 * Over 150 lines, because one table with every kind is easier to check than several.
 */

/** The two native grids. `'inch'` also brings °F, lbf, psi, oz and lb. */
export type UnitSystem = 'mm' | 'inch';

/** What a number is. `'points'` are percentage points of moisture content; `'lineLoad'` is force per length. */
export type Kind =
  | 'length'
  | 'percent'
  | 'points'
  | 'temperature'
  | 'angle'
  | 'ratio'
  | 'count'
  | 'force'
  | 'lineLoad'
  | 'stress'
  | 'mass'
  | 'volume'
  | 'area'
  | 'days'
  | 'number';

/** One unit: stored value = (number written - `zero`) × `size`. */
export interface Unit {
  /** Printed after the number; empty for pure numbers. */
  readonly label: string;
  readonly size: number;
  /** Spoken, with the ending of the plural in parentheses: "inch(es)". */
  readonly name: string;
  /** Further spellings a reader may type: lower case, without spaces inside, apart by spaces. */
  readonly also: string;
  /** Most decimals unless the caller says otherwise; without it, about three figures. */
  readonly digits?: number;
  readonly zero: number;
}

/** One kind: what it is called, and its units. */
export interface KindSpec {
  /** "Write a ...". */
  readonly name: string;
  /** A number as a reader would type it, by system. */
  readonly example: Readonly<Record<UnitSystem, string>>;
  /** Units printed, smallest first; a number of 1 or more of the next one moves up. The first is the field's. */
  readonly mm: readonly Unit[];
  readonly inch: readonly Unit[];
  /** Units that are read but never printed. */
  readonly read: readonly Unit[];
}

/** Millimeters in an inch, exact. */
export const INCH = 25.4;
/** Newtons in a pound-force, exact: 0.45359237 kg × 9.80665 m/s². */
const POUND_FORCE = 4.4482216152605;
/** Grams in an ounce (avoirdupois), exact: 453.59237 g / 16. */
const OUNCE = 28.349523125;

const unit = (label: string, size: number, name: string, also = '', digits?: number, zero = 0): Unit => ({
  label,
  size,
  name,
  also,
  digits,
  zero,
});

const kind = (
  name: string,
  mmExample: string,
  inchExample: string,
  mm: readonly Unit[],
  inch = mm,
  read: readonly Unit[] = [],
): KindSpec => ({ name, example: { mm: mmExample, inch: inchExample }, mm, inch, read });

/** A kind without units, or with the same in both systems. */
const same = (name: string, example: string, ...of: Parameters<typeof unit>) =>
  kind(name, example, example, [unit(...of)]);

/** Inches: what follows a foot. */
export const inch = unit('in', INCH, 'inch(es)', '"');
export const foot = unit('ft', 12 * INCH, 'foot', "feet '");

/** Every kind and its units. */
export const kinds: Readonly<Record<Kind, KindSpec>> = {
  length: kind(
    'length',
    '9.5 mm or 3/8 in',
    '3/8 in or 9.5 mm',
    [unit('mm', 1, 'millimeter(s)', '', 1)],
    [inch],
    [unit('cm', 10, 'centimeter(s)'), unit('m', 1000, 'meter(s)'), foot],
  ),
  percent: same('percentage', '45 %', '%', 1, 'percent', '', 1),
  points: same('number of points', '2.5', 'points', 1, 'percentage point(s)', '% %points point pt', 1),
  angle: same('angle', '45°', '°', 1, 'degree(s)', 'deg', 1),
  temperature: kind(
    'temperature',
    '21 °C',
    '70 °F',
    [unit('°C', 1, 'degree(s) Celsius', 'c celsius ° deg', 1)],
    [unit('°F', 5 / 9, 'degree(s) Fahrenheit', 'f fahrenheit ° deg', 1, 32)],
  ),
  ratio: same('ratio', '1.6 or 8:5', '', 1, '', '', 3),
  count: same('whole number', '9', '', 1, '', '', 0),
  force: kind(
    'force',
    '40 N',
    '9 lbf',
    [unit('N', 1, 'newton(s)')],
    [unit('lbf', POUND_FORCE, 'pound(s)-force', 'lb lbs')],
  ),
  lineLoad: kind(
    'force per length',
    '2 N/mm',
    '11 lbf/in',
    [unit('N/mm', 1, 'newton(s) per millimeter')],
    [unit('lbf/in', POUND_FORCE / INCH, 'pound(s)-force per inch', 'lb/in')],
  ),
  stress: kind(
    'stress',
    '5 MPa',
    '700 psi',
    [unit('MPa', 1, 'megapascal(s)', 'n/mm2')],
    [unit('psi', POUND_FORCE / INCH ** 2, 'pound(s) per square inch')],
  ),
  mass: kind(
    'mass',
    '350 g',
    '12 oz',
    [unit('g', 1, 'gram(s)'), unit('kg', 1000, 'kilogram(s)')],
    [unit('oz', OUNCE, 'ounce(s)'), unit('lb', 16 * OUNCE, 'pound(s)', 'lbs')],
  ),
  volume: kind(
    'volume',
    '500 cm³',
    '30 in³',
    [unit('cm³', 1e3, 'cubic centimeter(s)', 'cc ml'), unit('L', 1e6, 'liter(s)')],
    [unit('in³', INCH ** 3, 'cubic inch(es)')],
  ),
  area: kind(
    'area',
    '200 cm²',
    '30 in²',
    [unit('cm²', 100, 'square centimeter(s)')],
    [unit('in²', INCH ** 2, 'square inch(es)')],
    [unit('mm²', 1, 'square millimeter(s)')],
  ),
  days: same('number of days', '14', 'days', 1, 'day(s)', '', 0),
  number: same('number', '1.5', '', 1, ''),
};

/** A unit's name for one of it, or for another number of it. */
export const unitName = ({ name }: Unit, isOne: boolean): string =>
  name.replace(/\((.*)\)/, isOne ? '' : '$1');
