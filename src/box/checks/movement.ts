/** Checks that the lesson on wood movement teaches. */
import type { Check } from '../verdict.ts';

export const movementChecks: readonly Check[] = [];
