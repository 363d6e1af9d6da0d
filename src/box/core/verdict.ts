/**
 * A check compares one number of the box with the usual range of a rule, and gives a verdict with its reason.
 *
 *   usual     inside the range most makers keep to
 *   unusual   outside it: works, but know why you do it
 *   breaks    something will not fit, not hold or not move
 *   unknown   there is no number to judge, and why
 */
import { INCH, type Kind } from '../../units/index.ts';

export type State = 'usual' | 'unusual' | 'breaks' | 'unknown';

/** Low and high end, both included; infinite where the range is open. */
export type Range = readonly [low: number, high: number];

/** A usual range as the rule's page gives it: mm for one reader, inches for the other, neither converted. */
export interface NativeRange {
  readonly mm: Range;
  readonly inch: Range;
}

/** A rule's question to the numbers `V` of a box. */
export interface Check<V> {
  /** Permanent name: the rule's slug, and a word more where a rule has several checks. A reader's reason is kept under it. */
  readonly id: string;
  /** Slug of the rule in `content/rules`. */
  readonly rule: string;
  /** What is measured: "wall thickness". Lower case. */
  readonly label: string;
  readonly kind: Kind;
  /** Most decimals, where the usual range needs more than its kind prints. */
  readonly digits?: 0 | 1 | 2;
  /** A gap or another small difference: told in thousandths, with the mark of the rule beside it. */
  readonly as?: 'fine';
  /** Whether the rule speaks about this box at all. */
  readonly applies?: (values: V) => boolean;
  /** The input or result that is judged; a result can say why it is what it is. */
  readonly of: keyof V & string;
  /** A range that is no length is the same for every reader. */
  readonly usual: NativeRange | Range | ((values: V) => Range);
  /** The range the rule's page gives, where the usual range is worked out from it for this box. */
  readonly declares?: NativeRange | Range;
  /** Outside this something breaks; open where nothing does. */
  readonly works?: (values: V) => Range;
  /** One sentence each, why it matters: below the range, above it, inside it. */
  readonly says: Says | ((values: V) => Says);
  /** Why there is no number, where the number or its range is none. */
  readonly unknown?: string;
}

export interface Says {
  readonly low: string;
  readonly high: string;
  readonly inside: string;
  /** Below or above what works, where that is another matter than being unusual. */
  readonly breaks?: string;
}

/** What a rule says about a box. */
export interface Verdict<V = never> {
  readonly check: Check<V>;
  readonly state: State;
  readonly measured: number;
  readonly usual: Range;
  readonly because: string;
}

/** Room for arithmetic noise, so that a number that is the limit counts as inside. */
const slack = 1e-6;
/** Whether a number lies in a range, both ends included. */
export const inside = (value: number, [low, high]: Range) => value >= low - slack && value <= high + slack;
const everywhere: Range = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

/** From the lower of the two low ends to the higher of the high ones, in mm: what either reader calls usual is usual. */
export const eitherWay = ({ mm, inch }: NativeRange): Range => [
  Math.min(mm[0], inch[0] * INCH),
  Math.max(mm[1], inch[1] * INCH),
];

/** The range a number is judged by. */
export function usualOf<V>({ usual }: Check<V>, values: V): Range {
  if (typeof usual === 'function') return usual(values);
  return 'mm' in usual ? eitherWay(usual) : usual;
}

const noNumber = 'There is no number here: an input lies outside what its formula is good for.';

/** The verdict of one check; `undefined` where the rule does not speak about this box. */
export function judge<V>(check: Check<V>, values: V): Verdict<V> | undefined {
  if (check.applies && !check.applies(values)) return undefined;
  const measured = Number(values[check.of]);
  const usual = usualOf(check, values);
  if ([measured, ...usual].some(Number.isNaN))
    return { check, state: 'unknown', measured: Number.NaN, usual, because: check.unknown ?? noNumber };
  const works = check.works?.(values) ?? everywhere;
  const state: State = !inside(measured, works) ? 'breaks' : inside(measured, usual) ? 'usual' : 'unusual';
  const says = typeof check.says === 'function' ? check.says(values) : check.says;
  const side = measured < usual[0] ? says.low : says.high;
  const because = state === 'usual' ? says.inside : state === 'breaks' ? (says.breaks ?? side) : side;
  return { check, state, measured, usual, because };
}

/** The verdicts of those checks that speak about this box. */
export const verdictsOf = <V>(checks: readonly Check<V>[], values: V): Verdict<V>[] =>
  checks.map((check) => judge(check, values)).filter((verdict) => verdict !== undefined);
