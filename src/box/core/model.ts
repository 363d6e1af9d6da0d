/**
 * A model is a part of the whole calculation: the results and checks of one subject, with the results they need.
 * A lesson loads the model of its subject and no other; the page of the whole box loads them all (`evaluate.ts`).
 */

import { woodFigures } from '../wood/figures.ts';
import type { Box } from './box.ts';
import { numberOf, type Result } from './result.ts';
import type { ResultName, Values } from './values.ts';
import { type Check, judge, type Verdict } from './verdict.ts';

export type Results = Readonly<Partial<Record<ResultName, Result<Values>>>>;

export interface Model {
  /** In the order of computation: a row uses only rows above it. */
  readonly results: Results;
  readonly checks: readonly Check[];
}

/** A model of nothing but the box itself and the figures of its wood. */
export const bareModel: Model = { results: {}, checks: [] };

/**
 * Computes the results of a model.
 * @param box inputs in the units of `Box`; any finite numbers are accepted.
 * @returns the inputs, the figures of the wood and the results of the model; a result that cannot be computed, or whose
 *   relation does not hold for these inputs, is NaN, which `format` prints as a dash. Results outside the model are missing: `tests/box/subjects/models.test.ts` holds every lab
 *   and check to what its own model computes.
 */
export function compute(results: Results, box: Box): Values {
  const values = { ...box, ...woodFigures(box.species) } as { -readonly [K in keyof Values]: Values[K] };
  for (const name in results) {
    const result = results[name as ResultName]!;
    values[name as ResultName] = numberOf(result, values);
  }
  return values;
}

/** The verdicts of those checks that speak about this box. */
export const verdictsOf = (checks: readonly Check[], values: Values): Verdict[] =>
  checks.map((check) => judge(check, values)).filter((verdict) => verdict !== undefined);
