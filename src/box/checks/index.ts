/** Every check, in the order of the work. */
import { judge, type Check, type Verdict } from '../verdict.ts';
import type { Values } from '../values.ts';
import { proportionChecks } from './proportion.ts';

export const checks: readonly Check[] = [...proportionChecks];

/** The verdicts of all rules that speak about this box. */
export function verdicts(values: Values): Verdict[] {
  return checks.map((check) => judge(check, values)).filter((verdict) => verdict !== undefined);
}
