/** Moisture of the wood over its year, and how long it takes. */
import type { Subject } from '../../core/subject.ts';
import { type AirResults, airResults } from './results.ts';
import { airChecks } from './verdicts.ts';
import { type WaitResults, type WaitValues, waitResults } from './wait.ts';

export const air: Subject<keyof (AirResults & WaitResults), WaitValues> = {
  name: 'air',
  needs: [],
  results: { ...airResults, ...waitResults },
  checks: airChecks,
};
