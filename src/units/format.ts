/**
 * The one place that prints numbers, for the eye and for the ear.
 * Spaces follow NIST SP 811, section 7: one between number and unit (also before %), none before the
 * degree sign of an angle (section numbers from memory). The spaces do not break. From five digits on, thousands are
 * set apart by a narrow space.
 */
import { FINE_BELOW, fineInches } from './fine.ts';
import { INCH, type Kind, kinds, type Unit, type UnitSystem, unitName } from './kinds.ts';
import { leftFree, onRuler } from './on-ruler.ts';
import { NOISE, type Rounding, roundSteps } from './rounding.ts';
import type { Ruler } from './rulers.ts';

/** Finest parts of an inch that may be asked for; 100 and 1000 give decimals, for a decimal rule and for a caliper. */
export type Denominator = 8 | 16 | 32 | 64 | 100 | 1000;

/** How a number is printed. */
export interface FormatOptions {
  readonly system: UnitSystem;
  /** Default `'nearest'`; see rounding.ts. Gaps go up, panels and tongues down. */
  readonly round?: Rounding;
  /** Most decimals; zeros at the end are dropped. Inch lengths use `denominator` instead. */
  readonly digits?: 0 | 1 | 2 | 3;
  /** Parts of an inch. Default: 64 below one inch, 32 from there on. */
  readonly denominator?: Denominator;
  /**
   * `'fine'`: a gap, play, growth or other small difference, in thousandths of an inch with the mark of the rule beside
   * it (`fine.ts`), or in hundredths of a millimeter. From a quarter of an inch on it is written like any length.
   * `'exact'`: the same number alone, however long.
   * `'size'`: to mark or cut, on the reader's ruler, `'left'`: what is left free, as `on-ruler.ts` says.
   */
  readonly as?: 'fine' | 'exact' | 'size' | 'left';
  /** The reader's, for `'size'` and `'left'`; else the usual one of the system. */
  readonly ruler?: Ruler;
  /** Beside a line in a drawing, where a mark is short: "0.040 in (1/32 +)". */
  readonly short?: boolean;
  /** False leaves the unit out; the number is then in `fieldUnit`. */
  readonly unit?: boolean;
  /** Words for a screen reader: "1 and 3 eighths inches". */
  readonly spoken?: boolean;
}

/** A rounded number without sign or unit. */
interface Amount {
  readonly negative: boolean;
  readonly text: string;
  /** Words up to and with the unit, where they differ from text and unit name. */
  readonly words?: string;
  readonly isOne: boolean;
}

const GAP = '\u00a0';
const parts: Readonly<Record<number, string>> = {
  2: 'half',
  4: 'quarter',
  8: 'eighth',
  16: 'sixteenth',
  32: 'thirty-second',
  64: 'sixty-fourth',
  1000: 'thousandth',
};

/** Parts of an inch used when the caller names none: 64 below one inch, else 32. `value` in mm. */
const defaultDenominator = (value: number): Denominator => (Math.abs(value) < INCH ? 64 : 32);

function decimalAmount(shown: number, digits: number, rounding?: Rounding): Amount {
  const scale = 10 ** digits;
  const count = roundSteps(shown * scale, rounding);
  const [whole = '', decimals] = String(Math.abs(count) / scale).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return {
    negative: count < 0,
    text: decimals ? `${grouped}.${decimals}` : grouped,
    isOne: Math.abs(count) === scale,
  };
}

function inchAmount(inches: number, { denominator, round, unit = true }: FormatOptions): Amount {
  if (denominator && denominator > 64) return decimalAmount(inches, denominator === 100 ? 2 : 3, round);
  let below: number = denominator ?? defaultDenominator(inches * INCH);
  let count = Math.abs(inches) * 64 < 1 - NOISE ? 0 : roundSteps(inches * below, round);
  // What the fractions cannot show is written in thousandths, as the trade does.
  if (count === 0) {
    below = 1000;
    count = roundSteps(inches * below, round);
  }
  const negative = count < 0;
  count = Math.abs(count);
  const whole = Math.floor(count / below);
  let above = count % below;
  if (above === 0) return { negative, text: decimalAmount(whole, 0).text, isOne: whole === 1 };
  while (below !== 1000 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const fraction = below === 1000 ? (above / below).toFixed(3) : `${above}/${below}`;
  const name = `${above} ${parts[below]}${above > 1 ? 's' : ''}`;
  const after = unit ? (whole ? ' inches' : ' of an inch') : '';
  return {
    negative,
    text: whole ? `${whole}${GAP}${fraction}` : fraction,
    words: (whole ? `${whole} and ${name}` : name) + after,
    isOne: false,
  };
}

/** Decimals when the caller names none: the unit's own, else what gives about three figures. */
function usualDigits(shown: number, { digits, label }: Unit): number {
  const size = Math.abs(shown);
  // One decimal of a millimeter would swallow most of a hair's breadth.
  if (label === 'mm' && size < 0.1) return 2;
  // A pure number may be a coefficient such as 0.00248.
  return digits ?? Math.min(label ? 3 : 6, Math.max(0, 2 - Math.floor(Math.log10(size))));
}

/**
 * Prints a stored value: `9.5 mm`, `1 3/8 in`, `0.004 in`, `45 %`, `70 °F`, `1.2 kg`, `−3 °C`.
 *
 * Lengths in inches are reduced fractions. Below 1/64 in, and where the fraction asked for would print
 * 0, they are decimals with three digits, so that only less than half a thousandth prints 0 (and none
 * does that is rounded up, save arithmetic noise). Lengths in mm have one decimal, two below 0.1 mm.
 * @param value in the stored unit of its kind (kinds.ts); what is not a number, or lies at 1e15 or
 *   beyond, prints as a dash.
 */
export function format(value: number, kind: Kind, options: FormatOptions): string {
  const { system, spoken, unit: withUnit = true } = options;
  if (!(Math.abs(value) < 1e15)) return spoken ? 'no value' : '–';
  if (kind === 'length' && options.as) {
    const { as, ...plain } = options;
    const print = (length: number, how: Partial<FormatOptions>) => format(length, kind, { ...plain, ...how });
    if (as === 'size') return onRuler(value, options, print);
    if (as === 'left') return leftFree(value, options, print);
    if (as === 'fine' && Math.abs(value) >= FINE_BELOW) return print(value, { digits: 1, denominator: 64 });
    return system === 'inch' ? fineInches(value / INCH, options) : print(value, { digits: 2 });
  }
  const units = kinds[kind][system];
  const next = withUnit ? units.findLast((one) => Math.abs(value) >= one.size * (1 - NOISE)) : undefined;
  const unit = next ?? units[0]!;
  const shown = value / unit.size + unit.zero;
  const { negative, text, words, isOne } =
    unit.size === INCH
      ? inchAmount(shown, options)
      : decimalAmount(shown, options.digits ?? usualDigits(shown, unit), options.round);
  if (spoken) {
    const name = withUnit ? ` ${unitName(unit, isOne)}` : '';
    return ((negative ? 'minus ' : '') + (words ?? text.replaceAll('\u202f', '') + name)).trimEnd();
  }
  const label = isOne ? unit.label.replace(/(point|day)s/, '$1') : unit.label;
  const after = withUnit && label ? (label === '°' ? label : GAP + label) : '';
  return (negative ? '\u2212' : '') + text + after;
}
