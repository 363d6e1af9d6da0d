/**
 * A check compares one number of the box with the usual range of a rule, and gives a verdict with its reason.
 *
 *   usual     inside the range most makers keep to
 *   unusual   outside it: works, but know why you do it
 *   breaks    something will not fit, not hold or not move
 */
import type { Kind } from '../units/index.ts';
import type { Values } from './values.ts';

export type State = 'usual' | 'unusual' | 'breaks';

/** Low and high end, both included; infinite where the range is open. */
export type Range = readonly [low: number, high: number];

export interface Check {
  /** Slug of the rule in `content/rules`. */
  readonly rule: string;
  /** What is measured: "wall thickness". Lower case. */
  readonly label: string;
  readonly kind: Kind;
  /** Most decimals, where the usual range needs more than its kind prints. */
  readonly digits?: 0 | 1 | 2;
  /** Whether the rule speaks about this box at all. */
  readonly applies?: (values: Values) => boolean;
  readonly measure: (values: Values) => number;
  readonly usual: (values: Values) => Range;
  /** Outside this something breaks; open where nothing does. */
  readonly works?: (values: Values) => Range;
  /** One sentence each, why it matters: below the range, above it, inside it. */
  readonly says: { readonly low: string; readonly high: string; readonly inside: string };
}

export interface Verdict {
  readonly check: Check;
  readonly state: State;
  readonly measured: number;
  readonly usual: Range;
  readonly because: string;
}

/** Room for rounding, so that a number that prints as the limit counts as inside. */
const slack = 1e-6;
const inside = (value: number, [low, high]: Range) => value >= low - slack && value <= high + slack;

/** The verdict of one check; `undefined` where the rule does not speak about this box. A number that is NaN breaks. */
export function judge(check: Check, values: Values): Verdict | undefined {
  if (check.applies && !check.applies(values)) return undefined;
  const measured = check.measure(values);
  const usual = check.usual(values);
  const works = check.works?.(values) ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const state: State = !inside(measured, works) ? 'breaks' : inside(measured, usual) ? 'usual' : 'unusual';
  const because =
    state === 'usual' ? check.says.inside : measured < usual[0] ? check.says.low : check.says.high;
  return { check, state, measured, usual, because };
}
