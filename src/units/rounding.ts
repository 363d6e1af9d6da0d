/**
 * Rounding, said once for the whole site.
 *
 * `'up'` is toward plus infinity, so that a gap is never less than computed; `'down'` toward minus
 * infinity, so that a panel or tongue is never more. `'nearest'` takes the nearer step, and a tie goes
 * away from zero: 0.25 mm to one decimal is 0.3 mm, and minus 0.25 is minus 0.3.
 * The tie has to be stated because practice differs: ASTM E29 and rule A of ISO 80000-1 annex B send it
 * to the even step, rule B of the same annex to the larger magnitude, as here (both from memory).
 */

/** Which way a number is rounded to the step it is shown in. */
export type Rounding = 'up' | 'down' | 'nearest';

/**
 * Share of a step that is taken for arithmetic noise: a value this near a step, or a tie, is on it.
 * Without it 9.525 mm, which is 3/8 in, could print as 23/64 in when rounded down.
 */
export const NOISE = 1e-7;

/** Rounds a number of steps (any finite number) to a whole number of steps. */
export function roundSteps(count: number, rounding: Rounding = 'nearest'): number {
  const near = Math.round(count);
  if (Math.abs(count - near) < NOISE) return near;
  if (rounding === 'up') return Math.ceil(count);
  if (rounding === 'down') return Math.floor(count);
  return Math.sign(count) * Math.floor(Math.abs(count) + 0.5 + NOISE);
}

/** A number to so many decimals, a tie up: for places in drawings and to tell sizes apart, not for what a reader reads. */
export const toDecimals = (value: number, decimals: number): number =>
  Math.round(value * 10 ** decimals) / 10 ** decimals;

/** Takes arithmetic noise off a stored value: 13 figures, which keeps every 1/64 in up to a kilometer exact. */
export const clean = (value: number): number => Number(value.toPrecision(13));
