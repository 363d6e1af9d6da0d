/**
 * Where each point of a log end wants to go when the wood dries.
 *
 *   ρ = (1 − S_R) r,   ψ = k φ,   k = (1 − S_T)/(1 − S_R)
 *
 * Symbols: r, φ distance and angle from the pith before, ρ, ψ after; S_R, S_T shrinkage across and along the rings
 * as fractions for the change in question (negative when the wood takes up moisture).
 * Held fixed: rings are circles about the pith, the change is the same all through, nothing holds the piece.
 *
 * Every length along a ring wants to shrink by S_T and every length across by S_R. The map gives each exactly
 * that and stays flat, so a piece free to move ends there without stress. A piece around the pith cannot:
 * its rings would have to close over a missing wedge, and it cracks instead.
 */

import { isRefused, type Refused } from '../core/refusal.ts';
import type { Wood } from '../core/wood.ts';
import { movement, widthFigures } from '../movement/movement.ts';

/** mm; first across, then up. */
export type Point = readonly [x: number, y: number];

/** A rectangle in the end of a log. The pith is at (0, 0). */
export interface LogPiece {
  /** Center of the piece, mm from the pith. */
  readonly center: Point;
  /** mm, 1 to 1000 */
  readonly width: number;
  /** mm, 0.5 to 500 */
  readonly thickness: number;
  /** Direction of the width against the x axis, degrees counter-clockwise. */
  readonly turn: number;
}

/** Shrinkage as fractions of the size before: `radial` across the rings, `tangential` along them. */
export interface Shrinkages {
  readonly radial: number;
  readonly tangential: number;
}

/** A point turned about the origin by `angle` radians, counter-clockwise. */
export const turned = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];
/** Degrees to radians. */
export const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A point of the piece's own frame as a point of the log end. */
export function toLog({ center, turn }: LogPiece, point: Point): Point {
  const [x, y] = turned(point, radians(turn));
  return [center[0] + x, center[1] + y];
}

/** Where a point of the log goes. `towards` is the angle (radians) that stays put; all points must lie within half a turn of it. */
export function relaxed([x, y]: Point, { radial, tangential }: Shrinkages, towards: number): Point {
  let angle = Math.atan2(y, x) - towards;
  if (angle > Math.PI) angle -= 2 * Math.PI;
  if (angle <= -Math.PI) angle += 2 * Math.PI;
  const moved = towards + (angle * (1 - tangential)) / (1 - radial);
  const reach = (1 - radial) * Math.hypot(x, y);
  return [reach * Math.cos(moved), reach * Math.sin(moved)];
}

/** Shrinkages of a wood from one moisture content to another (%): negative when it swells. Refuses as `movement` does. */
export function shrinkagesOf(wood: Wood, from: number, to: number): Shrinkages | Refused {
  const tangential = movement(1, from, to, widthFigures(wood, 0));
  const radial = movement(1, from, to, widthFigures(wood, 90));
  if (isRefused(tangential)) return tangential;
  if (isRefused(radial)) return radial;
  return { tangential: -tangential.change, radial: -radial.change };
}
