/** Thickness and mass of the walls. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type WallsResults, type WallsValues, wallsResults } from './results.ts';
import { wallsChecks } from './verdicts.ts';

export const walls: Subject<keyof WallsResults, WallsValues> = {
  name: 'walls',
  needs: [size],
  results: wallsResults,
  checks: wallsChecks,
};
