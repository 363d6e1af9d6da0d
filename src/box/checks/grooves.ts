/** Checks that the lesson on groove margins teaches. */
import type { Check } from '../verdict.ts';

export const groovesChecks: readonly Check[] = [];
