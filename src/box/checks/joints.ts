/** Checks that the lesson on joint spacing teaches. */
import type { Check } from '../verdict.ts';

export const jointsChecks: readonly Check[] = [];
