/** What the lesson on walls computes and judges. */

import type { Model } from '../../core/model.ts';
import { sizeResults } from '../size/results.ts';
import { wallsResults } from './results.ts';
import { wallsChecks } from './verdicts.ts';

export const wallsModel = { results: { ...sizeResults, ...wallsResults }, checks: wallsChecks } as Model;
