/** What the lesson on air and wood computes and judges. */
import { airChecks } from '../checks/air.ts';
import type { Model } from '../model.ts';
import { airResults } from '../results/air.ts';
import { waitResults } from '../results/wait.ts';

export const airModel = { results: { ...airResults, ...waitResults }, checks: airChecks } as Model;
