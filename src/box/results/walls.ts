/** Results of the lesson on wall thickness and size. */
import type { ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

// biome-ignore lint/suspicious/noEmptyInterface: filled by its lesson
export interface WallsResults {}

export const wallsResults: ResultTable<keyof WallsResults, Values> = {};
