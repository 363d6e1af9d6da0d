/**
 * The smallest change of one input that would bring a verdict inside the usual range, without breaking anything else.
 *
 * Tried out on the whole box, since any input may move any number: each input is walked through its field, outward
 * from its present value in steps of the reader's ruler of growing width, then the threshold is closed in on; what gives
 * way does so at each step. Runs in a worker, or when a reader asks, not at each movement of a slider (some hundred
 * evaluations).
 */

import { format, type Ruler } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import { printOf, stepOf } from '../core/field.ts';
import { type Check, judge } from '../core/verdict.ts';
import { type Box, fields, hasInput, type NumberName } from '../subjects/inputs.ts';
import { evaluate, type Values } from '../whole/index.ts';
import { givingWay } from './gives-way.ts';
import { standingOf, worseBy } from './standing.ts';

export interface Change {
  readonly input: NumberName;
  readonly from: number;
  readonly to: number;
  /** Everything that changes with it: itself, and what gives way. */
  readonly inputs: Partial<Box>;
  /** Size of the change in steps of its field: the measure of "smallest". */
  readonly steps: number;
}

/** What a maker does not change to satisfy a rule: the contents, the air, the board at hand, a hand's push, one's own errors. */
const given: readonly NumberName[] = [
  'contentsLength',
  'contentsWidth',
  'contentsHeight',
  'temperature',
  'humidityToday',
  'humidityDry',
  'humidityDamp',
  'push',
  'boardLength',
  'boardWidth',
  'boardThickness',
  'kerf',
  'planing',
  'angleError',
  'lengthError',
  'dividersAcross',
  'dividersAlong',
];

const inputs = (Object.keys(fields) as (keyof Box)[]).filter(
  (name): name is NumberName => fields[name].type === 'number' && !given.includes(name as NumberName),
);

/** The nearest value in one direction that satisfies the check, or `undefined`. */
function nearest(
  now: Values,
  box: Box,
  check: Check<Values>,
  input: NumberName,
  direction: 1 | -1,
  ruler: Ruler,
): Change | undefined {
  const field = fields[input];
  const { low, high } = field;
  const step = stepOf(field, ruler);
  const from = box[input];
  const changeTo = (value: number) => givingWay(now, input, value, ruler);
  const satisfies = (value: number) =>
    judge(check, evaluate({ ...box, ...changeTo(value) }))?.state === 'usual';
  /** The reader's own steps that lie within the field. */
  const [least, most] = [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const start = direction > 0 ? Math.floor(from / step + 1e-9) : Math.ceil(from / step - 1e-9);
  const onGrid = (steps: number) => clean(Math.min(most, Math.max(least, start + direction * steps)) * step);
  let misses = 0;
  for (let steps = 1; ; steps = Math.ceil(steps * 1.3)) {
    if (satisfies(onGrid(steps))) {
      // Between the last miss and this hit lies the threshold; close in on it by whole steps.
      let hit = steps;
      while (hit - misses > 1) {
        const middle = Math.floor((misses + hit) / 2);
        if (satisfies(onGrid(middle))) hit = middle;
        else misses = middle;
      }
      const to = onGrid(hit);
      return { input, from, to, inputs: changeTo(to), steps: Math.abs(to - from) / step };
    }
    misses = steps;
    if (start + steps * direction <= least || start + steps * direction >= most) return undefined;
  }
}

/** Whether an input moves what a check judges: one step off, or at an end of its field. */
function moves(now: Values, box: Box, check: Check<Values>, input: NumberName, ruler: Ruler): boolean {
  const field = fields[input];
  const step = stepOf(field, ruler);
  const seen = (one: Values) => {
    const verdict = judge(check, one);
    return verdict && [verdict.state, verdict.measured, ...verdict.usual].join();
  };
  const before = seen(now);
  return [box[input] + step, box[input] - step, field.low, field.high]
    .filter((value) => value >= field.low && value <= field.high)
    .some((value) => seen(evaluate({ ...box, ...givingWay(now, input, value, ruler) })) !== before);
}

/**
 * Ways to bring one verdict inside its usual range, each by one input and in steps of the reader's own ruler, the
 * smallest first. None makes another rule stand worse, or a box impossible.
 * @returns at most three; empty where the verdict is usual already, or where no single input helps.
 */
export function smallestChanges(box: Box, check: Check<Values>, ruler: Ruler): Change[] {
  const now = evaluate(box);
  const verdict = judge(check, now);
  if (!verdict || verdict.state === 'usual') return [];
  const before = standingOf(box);
  /** A change too small to be written is none. */
  const isSeen = ({ input, from, to }: Change) => {
    const shown = (value: number) =>
      format(value, fields[input].kind, { ...printOf(fields[input]), system: ruler.system, ruler });
    return shown(from) !== shown(to);
  };
  const isHarmless = (change: Change) => worseBy(standingOf({ ...box, ...change.inputs }), before) === 0;
  return inputs
    .filter((input) => hasInput(input, box) && moves(now, box, check, input, ruler))
    .flatMap((input) => ([1, -1] as const).map((way) => nearest(now, box, check, input, way, ruler)))
    .filter((change) => change !== undefined)
    .sort((a, b) => a.steps - b.steps)
    .filter(isSeen)
    .slice(0, 12)
    .filter(isHarmless)
    .slice(0, 3);
}
