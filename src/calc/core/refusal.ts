/**
 * A calculation that cannot give an honest number gives a sentence instead.
 *
 * Functions that meet bad input in normal use return `Answer | Refused`; the sentence is shown beside the
 * field. NaN never leaves `calc`.
 */

/** Why there is no number: one sentence for the reader, naming the value that is in the way. */
export interface Refused {
  readonly refused: string;
}

/** Tells a refusal from an answer. */
export const isRefused = (answer: unknown): answer is Refused =>
  typeof answer === 'object' && answer !== null && 'refused' in answer;

/** One value with its allowed range, for `firstRefusal`. Ends are included. */
export type Bounded = readonly [name: string, value: number, low: number, high: number, unit: string];

/**
 * Refuses the first value that lies outside its range; NaN and infinities count as outside.
 * @returns `undefined` when all are inside.
 */
export function firstRefusal(...values: readonly Bounded[]): Refused | undefined {
  for (const [name, value, low, high, unit] of values) {
    if (!(value >= low && value <= high)) {
      const found = Number.isFinite(value) ? `${Number(value.toPrecision(6))}${unit}` : 'not a number';
      return { refused: `The ${name} is ${found}; this works from ${low}${unit} to ${high}${unit}.` };
    }
  }
  return undefined;
}
