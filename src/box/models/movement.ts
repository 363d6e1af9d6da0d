/** Bottom and lid through the year of the air: what lessons on movement compute and judge. */
import { movementChecks } from '../checks/movement.ts';
import type { Model } from '../model.ts';
import { airResults } from '../results/air.ts';
import { movementResults } from '../results/movement.ts';
import { sizeResults } from '../results/sizes.ts';

export const movementModel = {
  results: { ...sizeResults, ...airResults, ...movementResults },
  checks: movementChecks,
} as Model;
