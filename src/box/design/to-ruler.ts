/**
 * "To my ruler": the whole box brought to sizes of the reader's ruler, and what that costs.
 *
 * In this order: wall; lips, tongue, panels, grooves (at most half the wall); fingers to a cutter, an odd number of them;
 * the inside up; panels down. Where a rule would be lost, sizes go to a mark further on, panels to a finer mark, and what
 * helps in no way stays where it is and is named. So no rule is lost, nothing breaks, and what could be built still can.
 */

import type { Ruler } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import type { Box } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { bestOnMarks, isWithinFields } from './best-on-marks.ts';
import { givingBack } from './giving-back.ts';
import { liesOn, type RulerSize, rulerSizes } from './ruler-sizes.ts';
import { type Standing, standingOf, worseBy } from './standing.ts';

/** A size before and after. */
export interface Moved {
  readonly size: RulerSize;
  /** mm */
  readonly to: number;
}

export interface OntoRuler {
  /** What changes in the box; empty where nothing can. */
  readonly inputs: Partial<Box>;
  readonly moved: readonly Moved[];
  /** The move that is farthest, mm. */
  readonly farthest: number;
  /** Sizes that stay between two marks, since every mark near them would lose a rule. */
  readonly stays: readonly RulerSize[];
  /** Panels that lie on the finer mark of the ruler only: on its own they would lose a rule. */
  readonly finer: readonly RulerSize[];
  readonly before: Standing;
  readonly after: Standing;
}

/** What the way to a ruler makes of a box, for the reader to take or leave. */
export function toRuler(box: Box, ruler: Ruler): OntoRuler {
  const before = standingOf(box);
  const costOf = (one: Box) => (isWithinFields(one) ? worseBy(standingOf(one), before) : 1e6);
  const near = bestOnMarks(box, ruler, costOf);
  const settled = tidied(near.cost > 0 ? givingBack(near.tried, box, ruler, costOf) : near.box, box);
  const inputs = Object.fromEntries(
    Object.entries(settled).filter(([name, value]) => value !== box[name as keyof Box]),
  ) as Partial<Box>;
  const [was, is] = [rulerSizes(evaluate(box)), rulerSizes(evaluate(settled))];
  const moved = was.flatMap((size) => {
    const to = is.find(({ name }) => name === size.name)?.value ?? size.value;
    return Math.abs(to - size.value) > 1e-6 ? [{ size, to }] : [];
  });
  return {
    inputs,
    moved,
    farthest: Math.max(0, ...moved.map(({ size, to }) => Math.abs(to - size.value))),
    stays: is.filter((size) => !liesOn(size, ruler)),
    finer: is.filter((size) => liesOn(size, ruler) && !liesOn({ ...size, isPanel: undefined }, ruler)),
    before,
    after: standingOf(settled),
  };
}

/** Without the noise of arithmetic: what has not moved is as it was, to the last digit. */
const tidied = (box: Box, was: Box): Box =>
  Object.fromEntries(
    Object.entries(box).map(([name, value]) => {
      const old = was[name as keyof Box];
      if (typeof value !== 'number' || typeof old !== 'number') return [name, value];
      return [name, Math.abs(value - old) < 1e-6 ? old : clean(value)];
    }),
  ) as unknown as Box;
