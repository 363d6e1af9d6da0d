/** Every check, in the order of the work. */

import { verdictsOf } from '../model.ts';
import type { Values } from '../values.ts';
import type { Check, Verdict } from '../verdict.ts';
import { airChecks } from './air.ts';
import { finishChecks } from './finish.ts';
import { groovesChecks } from './grooves.ts';
import { jointsChecks } from './joints.ts';
import { lidRunChecks } from './lid-run.ts';
import { movementChecks } from './movement.ts';
import { proportionChecks } from './proportion.ts';
import { wallsChecks } from './walls.ts';

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
