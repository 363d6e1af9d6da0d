/** Bottom and lid through the year. */
import type { Subject } from '../../core/subject.ts';
import { air } from '../air/subject.ts';
import { size } from '../size/subject.ts';
import { type MovementResults, type MovementValues, movementResults } from './results.ts';
import { movementChecks } from './verdicts.ts';

export const movement: Subject<keyof MovementResults, MovementValues> = {
  name: 'movement',
  needs: [size, air],
  results: movementResults,
  checks: movementChecks,
};
