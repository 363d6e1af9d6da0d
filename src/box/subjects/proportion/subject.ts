/** Ratios of the box. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type ProportionResults, type ProportionValues, proportionResults } from './results.ts';
import { proportionChecks } from './verdicts.ts';

export const proportion: Subject<keyof ProportionResults, ProportionValues> = {
  name: 'proportion',
  needs: [size],
  results: proportionResults,
  checks: proportionChecks,
};
