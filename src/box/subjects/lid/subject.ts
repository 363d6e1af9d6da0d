/** How the lid runs. */
import type { Subject } from '../../core/subject.ts';
import { movement } from '../movement/subject.ts';
import { type LidResults, type LidValues, lidResults } from './results.ts';
import { lidChecks } from './verdicts.ts';

export const lid: Subject<keyof LidResults, LidValues> = {
  name: 'lid',
  needs: [movement],
  results: lidResults,
  checks: lidChecks,
};
