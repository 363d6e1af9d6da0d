/** Lips, web and corner of the grooves. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type GroovesResults, type GroovesValues, groovesResults } from './results.ts';
import { groovesChecks } from './verdicts.ts';

export const grooves: Subject<keyof GroovesResults, GroovesValues> = {
  name: 'grooves',
  needs: [size],
  results: groovesResults,
  checks: groovesChecks,
};
