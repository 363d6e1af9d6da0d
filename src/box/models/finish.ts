/** What the lesson on finishes computes and judges. */
import { finishChecks } from '../checks/finish.ts';
import type { Model } from '../model.ts';
import { airResults } from '../results/air.ts';
import { movementResults } from '../results/movement.ts';
import { sizeResults } from '../results/sizes.ts';

export const finishModel = {
  results: { ...sizeResults, ...airResults, ...movementResults },
  checks: finishChecks,
} as Model;
