/** What the lesson on grooves computes and judges. */
import { groovesChecks } from '../checks/grooves.ts';
import type { Model } from '../model.ts';
import { groovesResults } from '../results/grooves.ts';
import { sizeResults } from '../results/sizes.ts';

export const groovesModel = {
  results: { ...sizeResults, ...groovesResults },
  checks: groovesChecks,
} as Model;
