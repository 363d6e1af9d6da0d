/**
 * The smallest change of one input that would bring a verdict inside the usual range, without breaking anything else.
 *
 * Tried out on the whole box, since any input may move any number: each input is walked through its field, outward
 * from its present value in shop steps of growing width, then the threshold is closed in on. Runs when a reader asks,
 * not at each movement of a slider (about 2000 evaluations).
 */

import { format, type UnitSystem } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import { printOf, stepOf } from '../core/field.ts';
import { type Check, judge, type State } from '../core/verdict.ts';
import { evaluate, type Values, verdicts } from '../subjects/index.ts';
import type { Box } from '../subjects/inputs.ts';
import { fields, type NumberName } from '../subjects/inputs.ts';
import { designBox } from './design.ts';

export interface Change {
  readonly input: NumberName;
  readonly from: number;
  readonly to: number;
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

const ranks: Readonly<Record<State, number>> = { usual: 0, unusual: 1, unknown: 1, breaks: 2 };
/** How each check stands, by id, and what cannot be built. */
function standing(box: Box) {
  const values = evaluate(box);
  return {
    ranks: new Map(verdicts(values).map(({ check, state }) => [check.id, ranks[state]])),
    refused: designBox(box).refusals.length,
  };
}

/** The nearest value in one direction that satisfies the check, or `undefined`. */
function nearest(
  box: Box,
  check: Check<Values>,
  input: NumberName,
  direction: 1 | -1,
  system: UnitSystem,
): Change | undefined {
  const field = fields[input];
  const { low, high } = field;
  const step = stepOf(field, system);
  const from = box[input];
  const satisfies = (value: number) => {
    const verdict = judge(check, evaluate({ ...box, [input]: value }));
    return verdict !== undefined && verdict.state === 'usual';
  };
  /** The reader's own steps that lie within the field. */
  const [least, most] = [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const start = direction > 0 ? Math.floor(from / step + 1e-9) : Math.ceil(from / step - 1e-9);
  const onGrid = (steps: number) => clean(Math.min(most, Math.max(least, start + direction * steps)) * step);
  let misses = 0;
  for (let steps = 1; ; steps = Math.ceil(steps * 1.3)) {
    const value = onGrid(steps);
    if (satisfies(value)) {
      // Between the last miss and this hit lies the threshold; close in on it by whole steps.
      let hit = steps;
      while (hit - misses > 1) {
        const middle = Math.floor((misses + hit) / 2);
        if (satisfies(onGrid(middle))) hit = middle;
        else misses = middle;
      }
      const to = onGrid(hit);
      return { input, from, to, steps: Math.abs(to - from) / step };
    }
    misses = steps;
    if (start + steps * direction <= least || start + steps * direction >= most) return undefined;
  }
}

/**
 * Ways to bring one verdict inside its usual range, each by one input and in steps of the reader's own units, the
 * smallest first. None makes another rule stand worse, or a box impossible.
 * @returns at most three; empty where the verdict is usual already, or where no single input helps.
 */
export function smallestChanges(box: Box, check: Check<Values>, system: UnitSystem): Change[] {
  const now = judge(check, evaluate(box));
  if (!now || now.state === 'usual') return [];
  const before = standing(box);
  /** A change too small to be written is none. */
  const isSeen = ({ input, from, to }: Change) => {
    const shown = (value: number) => format(value, fields[input].kind, { system, ...printOf(fields[input]) });
    return shown(from) !== shown(to);
  };
  const harmless = ({ input, to }: Change) => {
    const after = standing({ ...box, [input]: to });
    return (
      after.refused <= before.refused &&
      [...after.ranks].every(([id, rank]) => rank <= (before.ranks.get(id) ?? 0))
    );
  };
  return inputs
    .flatMap((input) => ([1, -1] as const).map((direction) => nearest(box, check, input, direction, system)))
    .filter((change) => change !== undefined)
    .sort((a, b) => a.steps - b.steps)
    .filter(isSeen)
    .slice(0, 12)
    .filter(harmless)
    .slice(0, 3);
}
