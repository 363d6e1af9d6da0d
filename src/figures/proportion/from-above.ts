/** What the guesses about the ratio of a box share: boxes seen from above, to one scale. */
import type { Values } from '../../box/whole/index.ts';
import type { GuessFrame } from '../parts/guess-frame.ts';

export interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

/** User units a millimeter, and where the box's left upper corner stands. */
export const scale = 1.6;
export const [left, top] = [18, 34] as const;
export const height = 262;

/** Lengths in mm that can be marked, and where their ends lie in the drawing; `zero` is the place of no length. */
export const frameFrom = (
  zero: number,
  { low, high }: { low: number; high: number },
  middle: number,
): GuessFrame => ({
  width: 350,
  height,
  from: [zero + low * scale, middle],
  to: [zero + high * scale, middle],
});
