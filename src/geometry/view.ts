/** Directions to look in. */
import { cross, dot, unit, type Vector } from './convex.ts';

/** A direction to look in, with what is right and up on the sheet: three unit vectors at right angles. */
export interface View {
  readonly right: Vector;
  readonly up: Vector;
  /** From the eye into the picture. */
  readonly into: Vector;
}

/** A view from a place at a slant: `azimuth` and `height` of the eye in degrees, 0 looking along x, 90 along y. */
export function viewFrom(azimuth: number, height: number): View {
  const [turn, tilt] = [(azimuth * Math.PI) / 180, (height * Math.PI) / 180];
  const into: Vector = [Math.cos(turn) * Math.cos(tilt), Math.sin(turn) * Math.cos(tilt), -Math.sin(tilt)];
  const right = unit(cross(into, [0, 0, 1]));
  return { right, up: cross(right, into), into };
}

/** A point on the sheet: right, down, and depth, mm. */
export const onSheet = ({ right, up, into }: View, point: Vector): Vector => [
  dot(right, point),
  -dot(up, point),
  dot(into, point),
];
