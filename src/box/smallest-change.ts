/**
 * The smallest change of one input that would bring a verdict inside the usual range, without breaking anything else.
 *
 * Tried out on the whole box, since any input may move any number: each input is walked through its field, outward
 * from its present value in shop steps of growing width, then the threshold is closed in on. Runs when a reader asks,
 * not at each movement of a slider (about 2000 evaluations).
 */
import type { Box } from './box.ts';
import { checks } from './checks/index.ts';
import { designBox } from './design.ts';
import { evaluate } from './evaluate.ts';
import { fields, type NumberName } from './fields.ts';
import { type Check, judge } from './verdict.ts';

export interface Change {
  readonly input: NumberName;
  readonly from: number;
  readonly to: number;
  /** Size of the change in steps of its field: the measure of "smallest". */
  readonly steps: number;
}

/** What a maker does not change to please a rule: the contents, the air, the board at hand, a hand's push, one's own errors. */
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

/** How much is wrong with a box: what must not grow. */
function troubles(box: Box): number {
  const values = evaluate(box);
  const breaking = checks.filter((check) => judge(check, values)?.state === 'breaks').length;
  return breaking + designBox(box).refusals.length;
}

/** The nearest value in one direction that pleases the check, or `undefined`. */
function nearest(box: Box, check: Check, input: NumberName, direction: 1 | -1): Change | undefined {
  const { low, high, step } = fields[input];
  const from = box[input];
  const pleases = (value: number) => {
    const verdict = judge(check, evaluate({ ...box, [input]: value }));
    return verdict !== undefined && verdict.state === 'usual';
  };
  const onGrid = (steps: number) =>
    Math.min(high, Math.max(low, Math.round((from + direction * steps * step) / step) * step));
  let misses = 0;
  for (let steps = 1; ; steps = Math.ceil(steps * 1.3)) {
    const value = onGrid(steps);
    if (pleases(value)) {
      // Between the last miss and this hit lies the threshold; close in on it by whole steps.
      let hit = steps;
      while (hit - misses > 1) {
        const middle = Math.floor((misses + hit) / 2);
        if (pleases(onGrid(middle))) hit = middle;
        else misses = middle;
      }
      const to = onGrid(hit);
      return { input, from, to, steps: Math.abs(to - from) / step };
    }
    misses = steps;
    if (value <= low || value >= high) return undefined;
  }
}

/**
 * Ways to bring one verdict inside its usual range, each by one input, the smallest first.
 * @returns at most three; empty where the verdict is usual already, or where no single input helps.
 */
export function smallestChanges(box: Box, check: Check): Change[] {
  const now = judge(check, evaluate(box));
  if (!now || now.state === 'usual') return [];
  const before = troubles(box);
  return inputs
    .flatMap((input) => ([1, -1] as const).map((direction) => nearest(box, check, input, direction)))
    .filter((change) => change !== undefined)
    .sort((a, b) => a.steps - b.steps)
    .slice(0, 8)
    .filter(({ input, to }) => troubles({ ...box, [input]: to }) <= before)
    .slice(0, 3);
}
