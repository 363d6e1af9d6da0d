/** What the lesson on finishes computes and judges. */

import type { Model } from '../../core/model.ts';
import { airResults } from '../air/results.ts';
import { movementResults } from '../movement/results.ts';
import { sizeResults } from '../size/results.ts';
import { finishChecks } from './verdicts.ts';

export const finishModel = {
  results: { ...sizeResults, ...airResults, ...movementResults },
  checks: finishChecks,
} as Model;
