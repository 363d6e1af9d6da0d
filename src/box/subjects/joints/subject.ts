/** Fingers, tails and glue area at the corners. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type JointsResults, type JointsValues, jointsResults } from './results.ts';
import { jointsChecks } from './verdicts.ts';

export const joints: Subject<keyof JointsResults, JointsValues> = {
  name: 'joints',
  needs: [size],
  results: jointsResults,
  checks: jointsChecks,
};
