/** What the lesson on grooves computes and judges. */

import type { Model } from '../../core/model.ts';
import { sizeResults } from '../size/results.ts';
import { groovesResults } from './results.ts';
import { groovesChecks } from './verdicts.ts';

export const groovesModel = {
  results: { ...sizeResults, ...groovesResults },
  checks: groovesChecks,
} as Model;
