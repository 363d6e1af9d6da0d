/** How a side bends that is carried at both ends and pushed in the middle, as a path. */

/** Half of a bending line as a cubic Bézier curve, which these cubics are exactly: heights of its four points. */
export const free = [0, 0.5, 1, 1] as const;
export const held = [0, 0, 1, 1] as const;

/** From (x, y) along a span of `length`, sagging by `sag` at its middle; all in user units. */
export function bendingLine(
  shape: readonly number[],
  x: number,
  y: number,
  length: number,
  sag: number,
): string {
  const third = length / 6;
  const [, b = 0, c = 0] = shape;
  return `M${x} ${y}c${third} ${b * sag} ${2 * third} ${c * sag} ${3 * third} ${sag}s${2 * third} ${(b - 1) * sag} ${3 * third} ${-sag}`;
}
