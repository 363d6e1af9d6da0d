/** Faces and films of glue, force, and the wait for its water. */
import type { Subject } from '../../core/subject.ts';
import { air } from '../air/subject.ts';
import { joints } from '../joints/subject.ts';
import { size } from '../size/subject.ts';
import { type GlueResults, type GlueValues, glueResults } from './results.ts';
import { glueChecks } from './verdicts.ts';

export const glue: Subject<keyof GlueResults, GlueValues> = {
  name: 'glue',
  needs: [size, air, joints],
  results: glueResults,
  checks: glueChecks,
};
