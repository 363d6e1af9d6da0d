/** From the reader's box to every number and verdict about it. Pure; runs at each movement of a slider. */
import type { Box } from './box.ts';
import { type Result, relationOf } from './result.ts';
import { groovesResults } from './results/grooves.ts';
import { jointsResults } from './results/joints.ts';
import { movementResults } from './results/movement.ts';
import { proportionResults } from './results/proportion.ts';
import { sizeResults } from './results/sizes.ts';
import { wallsResults } from './results/walls.ts';
import { woodFigures } from './results/wood.ts';
import type { ResultName, Values } from './values.ts';

/** Every result by name, in the order of computation: a row uses only rows above it. */
export const results = {
  ...sizeResults,
  ...proportionResults,
  ...wallsResults,
  ...groovesResults,
  ...movementResults,
  ...jointsResults,
} as Readonly<Record<ResultName, Result<Values>>>;

const rows = Object.entries(results) as [ResultName, Result<Values>][];

/**
 * Computes every result of a box.
 * @param box inputs in the units of `Box`; any finite numbers are accepted.
 * @returns the inputs, the figures of the wood and all results. A result that cannot be computed is NaN, which `format` prints as a dash.
 */
export function evaluate(box: Box): Values {
  const values = { ...box, ...woodFigures(box.species) } as { -readonly [K in keyof Values]: Values[K] };
  for (const [name, result] of rows) {
    values[name] = relationOf(result, values).compute(result.given(values));
  }
  return values;
}
