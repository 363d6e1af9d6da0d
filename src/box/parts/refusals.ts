/** What cannot be built: one row for each condition. */
import type { Values } from '../values.ts';
import type { FittedPanel } from './panel-hold.ts';
import type { Plan } from './plan.ts';
import type { Refusal } from './refusal.ts';

export function refusalsOf(
  _values: Values,
  _plan: Plan | undefined,
  _bottom: FittedPanel | undefined,
  _lid: FittedPanel | undefined,
): Refusal[] {
  return [];
}
