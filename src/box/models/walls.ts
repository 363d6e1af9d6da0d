/** What the lesson on walls computes and judges. */
import { wallsChecks } from '../checks/walls.ts';
import type { Model } from '../model.ts';
import { sizeResults } from '../results/sizes.ts';
import { wallsResults } from '../results/walls.ts';

export const wallsModel = { results: { ...sizeResults, ...wallsResults }, checks: wallsChecks } as Model;
