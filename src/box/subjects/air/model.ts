/** What the lesson on air and wood computes and judges. */

import type { Model } from '../../core/model.ts';
import { airResults } from './results.ts';
import { airChecks } from './verdicts.ts';
import { waitResults } from './wait.ts';

export const airModel = { results: { ...airResults, ...waitResults }, checks: airChecks } as Model;
