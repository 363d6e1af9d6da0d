/**
 * Numbers drawn from a text: the same text, the same numbers, on any machine and for ever.
 *
 * The seed is the 32-bit FNV-1a hash (public domain) of the text's UTF-8 bytes: start at 2166136261; for each byte, xor it
 * in, then multiply by 16777619, keeping 32 bits. The generator is xoroshiro128+ of the library pure-rand, whose version is
 * pinned. `tests/exercises/frozen.test.ts` holds what comes out; a printed key would be wrong if it ever changed.
 */

import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { classKey, type Learner } from './learner.ts';

/** The 32-bit FNV-1a hash of a text, as a whole number from 0 to 2³² − 1. */
export function hash(text: string): number {
  let sum = 2166136261;
  for (const byte of new TextEncoder().encode(text)) sum = Math.imul(sum ^ byte, 16777619);
  return sum >>> 0;
}

/** What draws numbers, one after the other. */
export interface Draw {
  /** One of a list. */
  one<T>(list: readonly T[]): T;
  /** From `low` to `high`, both included, in equal steps. */
  step(low: number, high: number, by: number): number;
}

/** A fresh draw from a text. */
export function drawFrom(text: string): Draw {
  const random = xoroshiro128plus(hash(text) | 0);
  const upTo = (last: number) => uniformInt(random, 0, last);
  return {
    one: (list) => list[upTo(list.length - 1)]!,
    step: (low, high, by) => low + by * upTo(Math.round((high - low) / by)),
  };
}

/** The text that a learner's numbers for an exercise are drawn from. `use` tells other numbers of the same learner apart. */
export const seedText = ({ className, number }: Learner, exercise: string, use = ''): string =>
  [classKey(className), number, exercise, use].join('\n');
