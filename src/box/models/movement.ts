/** What the lesson on movement computes and judges. */
import { lidRunChecks } from '../checks/lid-run.ts';
import { movementChecks } from '../checks/movement.ts';
import type { Model } from '../model.ts';
import { airResults } from '../results/air.ts';
import { lidRunResults } from '../results/lid-run.ts';
import { movementResults } from '../results/movement.ts';
import { sizeResults } from '../results/sizes.ts';

export const movementModel = {
  results: { ...sizeResults, ...airResults, ...movementResults, ...lidRunResults },
  checks: [...movementChecks, ...lidRunChecks],
} as Model;
