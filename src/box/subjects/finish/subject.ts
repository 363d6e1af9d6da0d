/** Films on the wood. */
import type { Subject } from '../../core/subject.ts';
import { movement } from '../movement/subject.ts';
import { type FinishResults, type FinishValues, finishResults } from './results.ts';
import { finishChecks } from './verdicts.ts';

export const finish: Subject<keyof FinishResults, FinishValues> = {
  name: 'finish',
  needs: [movement],
  results: finishResults,
  checks: finishChecks,
};
