/** Every size of the box. */
import type { Subject } from '../../core/subject.ts';
import { type SizeResults, type SizeValues, sizeResults } from './results.ts';

export const size: Subject<keyof SizeResults, SizeValues> = {
  name: 'size',
  needs: [],
  results: sizeResults,
  checks: [],
};
