/** Ratios of the box. */
import type { Subject } from '../../core/subject.ts';
import { size } from '../size/subject.ts';
import { type ProportionResults, type ProportionValues, proportionResults } from './results.ts';
import { type RoomResults, roomResults } from './room.ts';
import { proportionChecks } from './verdicts.ts';

export const proportion: Subject<keyof (ProportionResults & RoomResults), ProportionValues & RoomResults> = {
  name: 'proportion',
  needs: [size],
  results: { ...proportionResults, ...roomResults },
  checks: proportionChecks,
};
