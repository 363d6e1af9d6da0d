/** Ends out of square, unequal walls, diagonals, twist. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type SquareResults, type SquareValues, squareResults } from './results.ts';
import { squareChecks } from './verdicts.ts';

export const square: Subject<keyof SquareResults, SquareValues> = {
  name: 'square',
  needs: [size],
  results: squareResults,
  checks: squareChecks,
};
