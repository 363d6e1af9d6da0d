/** From the reader's box to every number and verdict about it. Pure; runs at each movement of a slider. */
import type { Box } from '../core/box.ts';
import { compute, type Model } from '../core/model.ts';
import type { Result } from '../core/result.ts';
import type { ResultName, Values } from '../core/values.ts';
import { airResults } from './air/results.ts';
import { waitResults } from './air/wait.ts';
import { groovesResults } from './grooves/results.ts';
import { jointsResults } from './joints/results.ts';
import { lidRunResults } from './lid/results.ts';
import { movementResults } from './movement/results.ts';
import { proportionResults } from './proportion/results.ts';
import { sizeResults } from './size/results.ts';
import { checks } from './verdicts.ts';
import { wallsResults } from './walls/results.ts';

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
