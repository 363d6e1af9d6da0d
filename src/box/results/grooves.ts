/** Results of the lesson on groove margins. */
import type { ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

// biome-ignore lint/suspicious/noEmptyInterface: filled by its lesson
export interface GroovesResults {}

export const groovesResults: ResultTable<keyof GroovesResults, Values> = {};
