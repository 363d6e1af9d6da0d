/**
 * Numbers as a reader writes them: `4 1/2`, `4-1/2 in`, `4½"`, `1' 2 1/4"`, `11.4 cm`, `4,5`, `45 %`, `70 F`.
 *
 * Text longer than any number is refused before a pattern sees it, so no text can take long.
 */
import {
  foot,
  inch,
  type Kind,
  type KindSpec,
  kinds,
  type Unit,
  type UnitSystem,
  unitName,
} from './kinds.ts';
import { clean } from './rounding.ts';

/** A stored value, or one or two sentences that say what was expected. The value is always finite. */
export type Parsed =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string };

const LONGEST = 60;
const NUMBER = /^([+-]?) ?(?:(?:(\d+)(?: ?- ?| (?:and )?))?(\d+) ?\/ ?(\d+)|(\d+[.,]?\d*|[.,]\d+)) ?(.*)$/;
const FEET_AND_INCHES = /^(.*?) ?(?:'|ft\.?|feet|foot) ?-? ?([\d.,].*)$/;
const RATIO = /^([\d.,]+) ?(?::|to) ?([\d.,]+)$/;

/** One way to write each sign, lower case, single plain spaces. */
const tidy = (text: string): string =>
  text
    .replace(/(\d)\u202f(?=\d{3})/g, '$1')
    .replace(/[¼-¾⅐-⅞↉]/g, ' $&')
    // A fraction written small, "1¹/₂"; any other small digit is a power, which no field wants.
    .replace(/([⁰¹²³⁴-⁹]+) ?[/\u2044] ?([₀-₉]+)/g, ' $1/$2')
    .replace(/(\d) ?[⁰¹²³⁴-⁹₀-₉]+(?![\d⁰¹²³⁴-⁹₀-₉]*\/)/g, '$1^')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[’‘′`´]/g, "'")
    .replace(/[“”]|''/g, '"')
    .replace(/\u2044/g, '/')
    .replace(/[−–‐‑]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/^ ?~/, '')
    .trim();

/** `word` has no spaces; British -re is read as -er. */
const spelled = (unit: Unit, word: string): boolean =>
  [unit.label, unitName(unit, true), unitName(unit, false), ...unit.also.split(' ')].some(
    (name) => tidy(name).replaceAll(' ', '') === word.replace(/(met|lit)re/, '$1er'),
  );

const allUnits = ({ mm, inch: inches, read: others }: KindSpec): readonly Unit[] => [
  ...mm,
  ...inches,
  ...others,
];

const withArticle = (name: string): string => `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;

/** A problem in words, or the value. `units[0]` is meant when none is written. */
function read(text: string, units: readonly Unit[], spec: KindSpec): number | string {
  const [, sign, whole = '0', above, below, decimal, rest = ''] = NUMBER.exec(text) ?? [];
  if (sign === undefined) return 'This does not start with a number.';
  if (Number(below) === 0) return 'A fraction cannot have 0 below the line.';
  if (decimal && /^[1-9]\d{0,2},\d{3}$/.test(decimal))
    return `Write ${decimal.replace(',', '')} or ${decimal.replace(',', '.')}, because ${decimal} can mean both.`;
  const word = rest.replaceAll(' ', '').replace(/\.$/, '');
  const unit = word ? units.find((one) => spelled(one, word)) : units[0];
  if (!unit) {
    for (const other of Object.values(kinds)) {
      const wrong = other !== spec && allUnits(other).find((one) => spelled(one, word));
      if (wrong) return `${wrong.label} belongs to ${withArticle(other.name)}.`;
    }
    return spec.mm[0]!.label
      ? `The text after the number is not a unit for ${withArticle(spec.name)}.`
      : 'No unit is wanted here.';
  }
  const size = decimal ? Number(decimal.replace(',', '.')) : Number(whole) + Number(above) / Number(below);
  return clean(((sign === '-' ? -size : size) - unit.zero) * unit.size);
}

function readKind(text: string, kind: Kind, system: UnitSystem): number | string {
  const spec = kinds[kind];
  const feet = kind === 'length' && FEET_AND_INCHES.exec(text);
  if (feet) {
    const long = read(feet[1]!, [foot], spec);
    const rest = read(feet[2]!, [inch], spec);
    // Elsewhere an apostrophe parts thousands.
    if (/^\d{3}$/.test(feet[2]!))
      return `Write ${feet[1]}${feet[2]}, or add the unit of the last number, because ${text} can mean both.`;
    if (typeof long === 'string') return long;
    if (typeof rest === 'string') return rest;
    return clean(text.startsWith('-') ? long - rest : long + rest);
  }
  const pair = kind === 'ratio' && RATIO.exec(text);
  if (pair) {
    const [first, second] = [read(pair[1]!, spec.mm, spec), read(pair[2]!, spec.mm, spec)];
    if (typeof first === 'string') return first;
    if (typeof second === 'string') return second;
    return second === 0 ? 'A ratio cannot end in 0.' : clean(first / second);
  }
  const value = read(text, [...spec[system], ...allUnits(spec)], spec);
  return kind === 'count' && typeof value === 'number' && !Number.isInteger(value)
    ? 'This is not a whole number.'
    : value;
}

/**
 * Reads a number of a kind. Without a unit, the unit of the field is meant (`fieldUnit`).
 * A comma is a decimal comma; where it could part thousands (`1,250`) the reader is asked.
 * @returns the value in the stored unit of its kind, below 1e12 in size; never throws.
 */
export function parse(text: string, kind: Kind, system: UnitSystem): Parsed {
  const tidied = text.length > LONGEST ? '' : tidy(text);
  const value =
    text.length > LONGEST
      ? 'This is too long to be a number.'
      : tidied
        ? readKind(tidied, kind, system)
        : 'Nothing is written here.';
  const isNumber = typeof value === 'number';
  if (isNumber && Math.abs(value) < 1e12) return { ok: true, value: value + 0 };
  const problem = isNumber ? 'This number is too large.' : value;
  const { name, example } = kinds[kind];
  return { ok: false, message: `${problem} Write ${withArticle(name)}, such as ${example[system]}.` };
}
