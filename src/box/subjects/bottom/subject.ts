/** How the bottom sags and sounds. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type BottomResults, type BottomValues, bottomResults } from './results.ts';
import { bottomChecks } from './verdicts.ts';

export const bottom: Subject<keyof BottomResults, BottomValues> = {
  name: 'bottom',
  needs: [size],
  results: bottomResults,
  checks: bottomChecks,
};
