/** What the lesson on joints computes and judges. */
import { jointsChecks } from '../checks/joints.ts';
import type { Model } from '../model.ts';
import { jointsResults } from '../results/joints.ts';
import { sizeResults } from '../results/sizes.ts';

export const jointsModel = { results: { ...sizeResults, ...jointsResults }, checks: jointsChecks } as Model;
