/** What the lesson on movement computes and judges: movement, and the run of the lid. Apart, since others need movement only. */

import type { Model } from '../../core/model.ts';
import { movementModel } from '../movement/model.ts';
import { lidRunResults } from './results.ts';
import { lidRunChecks } from './verdicts.ts';

export const lidRunModel = {
  results: { ...movementModel.results, ...lidRunResults },
  checks: [...movementModel.checks, ...lidRunChecks],
} as Model;
