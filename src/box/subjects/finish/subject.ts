/** Films on the wood: no number of the box follows from them yet, only what rules say of its movement. */
import type { Subject } from '../../core/subject.ts';
import type { MovementValues } from '../movement/results.ts';
import { movement } from '../movement/subject.ts';
import { finishChecks } from './verdicts.ts';

export const finish: Subject<never, MovementValues> = {
  name: 'finish',
  needs: [movement],
  results: {},
  checks: finishChecks,
};
