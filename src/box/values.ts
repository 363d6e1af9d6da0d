/** Everything known about a box: what the reader decided, the figures of its wood, and all that follows. */
import type { Box } from './box.ts';
import type { ProportionResults } from './results/proportion.ts';
import type { SizeResults } from './results/sizes.ts';

export interface Values extends Box, SizeResults, ProportionResults {}

/** Names of the computed numbers. */
export type ResultName = Exclude<keyof Values, keyof Box>;
