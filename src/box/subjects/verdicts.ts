/** Every check, in the order of the work. */

import { verdictsOf } from '../core/model.ts';
import type { Values } from '../core/values.ts';
import type { Check, Verdict } from '../core/verdict.ts';
import { airChecks } from './air/verdicts.ts';
import { finishChecks } from './finish/verdicts.ts';
import { groovesChecks } from './grooves/verdicts.ts';
import { jointsChecks } from './joints/verdicts.ts';
import { lidRunChecks } from './lid/verdicts.ts';
import { movementChecks } from './movement/verdicts.ts';
import { proportionChecks } from './proportion/verdicts.ts';
import { wallsChecks } from './walls/verdicts.ts';

export const checks: readonly Check[] = [
  ...proportionChecks,
  ...airChecks,
  ...wallsChecks,
  ...movementChecks,
  ...lidRunChecks,
  ...jointsChecks,
  ...groovesChecks,
  ...finishChecks,
];

/** The verdicts of all rules that speak about this box. */
export const verdicts = (values: Values): Verdict[] => verdictsOf(checks, values);
