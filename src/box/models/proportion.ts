/** What the lesson on proportion computes and judges. */
import { proportionChecks } from '../checks/proportion.ts';
import type { Model } from '../model.ts';
import { proportionResults } from '../results/proportion.ts';
import { sizeResults } from '../results/sizes.ts';

export const proportionModel = {
  results: { ...sizeResults, ...proportionResults },
  checks: proportionChecks,
} as Model;
