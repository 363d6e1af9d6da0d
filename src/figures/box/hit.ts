/** Which part of the box on the bench a fingertip means. */
import type { BenchPicture } from './bench-picture.ts';
import { type PartOfBox, partsOfBox } from './parts-of-box.ts';
import type { Place } from './spots.ts';

/** What is narrower than a fingertip wins over the wood around it within this share of the tolerance. */
const pull = 0.4;
const narrow: readonly PartOfBox[] = ['grooves', 'corners'];

const away = (a: Place, b: Place) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Distance of a place from a line between two points. */
function fromLine(place: Place, a: Place, b: Place): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const share = square > 0 ? ((place[0] - a[0]) * dx + (place[1] - a[1]) * dy) / square : 0;
  const on = Math.min(1, Math.max(0, share));
  return away(place, [a[0] + on * dx, a[1] + on * dy]);
}

/** Distance of a place from a polygon; 0 within it. Coordinates beyond the first two are not looked at. */
function fromOutline(place: Place, points: readonly (readonly [number, number, ...number[]])[]): number {
  let isIn = false;
  let least = Number.POSITIVE_INFINITY;
  points.forEach(([ax, ay], index) => {
    const [bx, by] = points[(index + 1) % points.length]!;
    if (ay > place[1] !== by > place[1] && place[0] < ax + ((place[1] - ay) / (by - ay)) * (bx - ax))
      isIn = !isIn;
    least = Math.min(least, fromLine(place, [ax, ay], [bx, by]));
  });
  return isIn ? 0 : least;
}

/**
 * The part that is meant by a touch: what lies under it; a groove or a joint close by goes before the wood around it.
 * @param place on the sheet of the picture, mm
 * @param tolerance how far off a part it may be, mm on the sheet
 */
export function partAt(
  { spots, regions }: BenchPicture,
  place: Place,
  tolerance: number,
): PartOfBox | undefined {
  // The end of a line to something hidden lies on what hides it.
  const hidden = partsOfBox.find(
    (part) => spots[part].hidden && away(place, spots[part].at) <= pull * tolerance,
  );
  if (hidden) return hidden;
  let found: PartOfBox | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const { home, polygon } of regions) {
    const off = fromOutline(place, polygon.points);
    if (off > tolerance) continue;
    const counts = narrow.includes(home) ? off - pull * tolerance : off;
    if (counts >= least) continue;
    least = counts;
    found = home;
  }
  return found;
}
