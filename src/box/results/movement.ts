/** Results of the lesson on wood movement. */
import type { ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

// biome-ignore lint/suspicious/noEmptyInterface: filled by its lesson
export interface MovementResults {}

export const movementResults: ResultTable<keyof MovementResults, Values> = {};
