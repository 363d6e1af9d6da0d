/** Plane outlines. */

/** A corner; coordinates beyond the first two are not looked at. */
type Corner = Readonly<Record<0 | 1, number>>;

/** Twice the area inside an outline without crossings; positive where it goes round counterclockwise. */
export function twiceArea(outline: readonly Corner[]): number {
  let twice = 0;
  let last = outline[outline.length - 1];
  if (!last) return 0;
  for (const corner of outline) {
    twice += last[0] * corner[1] - corner[0] * last[1];
    last = corner;
  }
  return twice;
}
