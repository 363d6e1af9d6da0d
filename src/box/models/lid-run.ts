/** What the lesson on movement computes and judges: movement, and the run of the lid. Apart, since others need movement only. */
import { lidRunChecks } from '../checks/lid-run.ts';
import type { Model } from '../model.ts';
import { lidRunResults } from '../results/lid-run.ts';
import { movementModel } from './movement.ts';

export const lidRunModel = {
  results: { ...movementModel.results, ...lidRunResults },
  checks: [...movementModel.checks, ...lidRunChecks],
} as Model;
