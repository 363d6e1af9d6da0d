/**
 * A pull, a cap or a batten glued across the grain: how far it and the panel want to differ.
 *
 * The panel moves across its grain, the piece glued on hardly moves along its own. The glue has to bridge the
 * difference, half of it at each end when the middle stays put. It grows with the length of the joint: that is why
 * a short one survives. The number is all that is given here: no strength of glue or wood is claimed.
 */

import { isRefused, type Refused } from '../core/refusal.ts';
import { lengthwiseMovement } from './lengthwise.ts';
import { type DirectionFigures, movement } from './movement.ts';

/** Least and most, mm; the movement along the grain is known as a range only. */
export interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Changes over the length of the joint, mm, growth positive. */
export interface GluedOn {
  /** What the panel wants, across its grain. */
  readonly panel: number;
  /** What the piece glued on wants, along its grain. */
  readonly piece: Spread;
  /** Panel minus piece over the whole joint, whatever the direction. */
  readonly difference: Spread;
  /** The same at each end, middle fixed. */
  readonly eachEnd: Spread;
}

/**
 * How far the two want to differ when both go from `from` to `to` % MC.
 * @param length of the joint across the panel's grain, mm. Refuses as `movement` does.
 */
export function gluedOn(
  length: number,
  figures: DirectionFigures,
  from: number,
  to: number,
): GluedOn | Refused {
  const across = movement(length, from, to, figures);
  if (isRefused(across)) return across;
  const along = lengthwiseMovement(length, from, to);
  if (isRefused(along)) return along;
  const ends = [Math.abs(across.change - along.low), Math.abs(across.change - along.high)];
  const difference = { low: Math.min(...ends), high: Math.max(...ends) };
  return {
    panel: across.change,
    piece: { low: Math.min(along.low, along.high), high: Math.max(along.low, along.high) },
    difference,
    eachEnd: { low: difference.low / 2, high: difference.high / 2 },
  };
}
