/** Bottom and lid through the year of the air: what lessons on movement compute and judge. */

import type { Model } from '../../core/model.ts';
import { airResults } from '../air/results.ts';
import { sizeResults } from '../size/results.ts';
import { movementResults } from './results.ts';
import { movementChecks } from './verdicts.ts';

export const movementModel = {
  results: { ...sizeResults, ...airResults, ...movementResults },
  checks: movementChecks,
} as Model;
