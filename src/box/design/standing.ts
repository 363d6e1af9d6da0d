/** How a box stands with every rule, and what cannot be built: what tells whether a change makes it worse. */

import type { State } from '../core/verdict.ts';
import type { Box } from '../subjects/inputs.ts';
import { evaluate, verdicts } from '../whole/index.ts';
import { refusalsOf, unreadable } from './refusals/index.ts';

export interface Standing {
  /** By check: 0 where the rule is kept, 1 outside its usual range or without a number, 2 where something breaks. */
  readonly ranks: ReadonlyMap<string, number>;
  /** Conditions that stand in the way of building it. */
  readonly refused: ReadonlySet<string>;
}

const rankOf: Readonly<Record<State, number>> = { usual: 0, unusual: 1, unknown: 1, breaks: 2 };

export function standingOf(box: Box): Standing {
  const impossible = unreadable(box);
  const values = evaluate(box);
  const refusals = impossible.length > 0 ? impossible : refusalsOf(values);
  return {
    ranks: new Map(verdicts(values).map(({ check, state }) => [check.id, rankOf[state]])),
    refused: new Set(refusals.map(({ id }) => id)),
  };
}

/** What cannot be built weighs more than all rules together. */
const refusalWeighs = 1000;
/** Something that breaks weighs more than all rules that are not usual. */
const breakWeighs = 100;

/**
 * How much worse a box stands than another, 0 if in no way: each rule that it keeps less, each new break and each new
 * condition that it cannot be built.
 */
export function worseBy(after: Standing, before: Standing): number {
  let worse = 0;
  for (const [id, rank] of after.ranks) {
    const was = before.ranks.get(id) ?? 0;
    if (rank > was) worse += rank === 2 ? breakWeighs : 1;
  }
  for (const id of after.refused) if (!before.refused.has(id)) worse += refusalWeighs;
  return worse;
}
