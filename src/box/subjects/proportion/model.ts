/** What the lesson on proportion computes and judges. */

import type { Model } from '../../core/model.ts';
import { sizeResults } from '../size/results.ts';
import { proportionResults } from './results.ts';
import { proportionChecks } from './verdicts.ts';

export const proportionModel = {
  results: { ...sizeResults, ...proportionResults },
  checks: proportionChecks,
} as Model;
