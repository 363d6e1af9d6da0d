/** What the lesson on joints computes and judges. */

import type { Model } from '../../core/model.ts';
import { sizeResults } from '../size/results.ts';
import { jointsResults } from './results.ts';
import { jointsChecks } from './verdicts.ts';

export const jointsModel = { results: { ...sizeResults, ...jointsResults }, checks: jointsChecks } as Model;
