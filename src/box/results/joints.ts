/** Results of the lesson on joint spacing. */
import type { ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

// biome-ignore lint/suspicious/noEmptyInterface: filled by its lesson
export interface JointsResults {}

export const jointsResults: ResultTable<keyof JointsResults, Values> = {};
