/** Mass of the parts. */

import { practice } from '../core/practice.ts';
import type { Part } from './part.ts';
import type { Plan } from './plan.ts';

/** Mass of all parts, g, the wood at 12 % moisture; `undefined` where the wood's density is not known. */
export function massOf({ values }: Plan, parts: readonly Part[]): number | undefined {
  const density = { solid: values.woodDensity / 1000, plywood: practice.plywoodDensity };
  const mass = parts.reduce((sum, { volume, material }) => sum + (volume / 1000) * density[material], 0);
  return Number.isFinite(mass) && mass > 0 ? mass : undefined;
}
