/**
 * A model is a part of the whole calculation: the results and checks of some subjects, with the results they need. A
 * lesson has the model of its subject and no other; the page of the whole box has them all (`box/whole`).
 */
import { numberOf, type Result } from '../core/result.ts';
import type { Subject } from '../core/subject.ts';
import type { Check } from '../core/verdict.ts';
import type { ResultName, Values } from '../whole/index.ts';
import { woodFigures } from '../wood/figures.ts';
import type { Box } from './inputs.ts';

export type Results = Readonly<Partial<Record<ResultName, Result<Values>>>>;

export interface Model {
  /** In the order of computation: a row uses only rows above it. */
  readonly results: Results;
  readonly checks: readonly Check<Values>[];
}

/** The results of subjects and of all they need, each once, what is needed first. */
const resultsOf = (subjects: readonly Subject<string, Values>[]): Results =>
  Object.assign({}, ...subjects.flatMap(({ needs, results }) => [resultsOf(needs), results]));

/** The model of these subjects; without one, of nothing but the box itself and the figures of its wood. */
export const modelOf = (...subjects: readonly Subject<string, Values>[]): Model => ({
  results: resultsOf(subjects),
  checks: subjects.flatMap(({ checks }) => checks),
});

/**
 * Computes the results of a model.
 * @param box inputs in the units of `Box`; any finite numbers are accepted.
 * @returns the inputs, the figures of the wood and the results of the model; a result that cannot be computed, or whose
 *   relation does not hold for these inputs, is NaN, which `format` prints as a dash. Results outside the model are
 *   missing: `tests/box/subjects/models.test.ts` holds every lab and check to what its own model computes.
 */
export function compute(results: Results, box: Box): Values {
  const values = { ...box, ...woodFigures(box.species) } as { -readonly [K in keyof Values]: Values[K] };
  for (const name in results) {
    const result = results[name as ResultName]!;
    values[name as ResultName] = numberOf(result, values);
  }
  return values;
}
