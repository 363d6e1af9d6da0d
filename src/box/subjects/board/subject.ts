/** The board the walls are cut from: its thickness, its length, its figure. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type BoardResults, type BoardValues, boardResults } from './results.ts';
import { boardChecks } from './verdicts.ts';

export const board: Subject<keyof BoardResults, BoardValues> = {
  name: 'board',
  needs: [size],
  results: boardResults,
  checks: boardChecks,
};
