/** Checks that the lesson on wall thickness and size teaches. */
import type { Check } from '../verdict.ts';

export const wallsChecks: readonly Check[] = [];
