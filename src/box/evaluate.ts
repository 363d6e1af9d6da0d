/** From the reader's box to every number and verdict about it. Pure; runs at each movement of a slider. */
import type { Box } from './box.ts';
import { checks } from './checks/index.ts';
import { compute, type Model } from './model.ts';
import type { Result } from './result.ts';
import { airResults } from './results/air.ts';
import { groovesResults } from './results/grooves.ts';
import { jointsResults } from './results/joints.ts';
import { lidRunResults } from './results/lid-run.ts';
import { movementResults } from './results/movement.ts';
import { proportionResults } from './results/proportion.ts';
import { sizeResults } from './results/sizes.ts';
import { waitResults } from './results/wait.ts';
import { wallsResults } from './results/walls.ts';
import type { ResultName, Values } from './values.ts';

/** Every result by name, in the order of computation: a row uses only rows above it. */
export const results = {
  ...sizeResults,
  ...proportionResults,
  ...wallsResults,
  ...groovesResults,
  ...airResults,
  ...waitResults,
  ...movementResults,
  ...lidRunResults,
  ...jointsResults,
} as Readonly<Record<ResultName, Result<Values>>>;

/** Every number about a box; see `compute`. */
export const evaluate = (box: Box): Values => compute(results, box);

/** All results and checks of all subjects. */
export const wholeModel: Model = { results, checks };
