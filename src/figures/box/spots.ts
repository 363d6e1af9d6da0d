/**
 * Where each part of a box is pointed at: a place of it that is seen, in the middle of a large piece of it. A part that is
 * hidden has a place all the same, where it lies behind the others. On the sheet, mm.
 */
import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import type { Polygon, Vector } from '../../geometry/convex.ts';
import { facesOf } from '../../geometry/faces.ts';
import { twiceArea } from '../../geometry/polygon.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import type { Shown } from '../../geometry/visible.ts';
import { homeOf, type PartOfBox, partsOfBox, type Region } from './parts-of-box.ts';

export type Place = readonly [x: number, y: number];

export interface Spot {
  readonly at: Place;
  readonly hidden: boolean;
}

/** Less of a part than this is not seen well enough to point at, mm². */
const least = 4;

/** The middle of an area: that of the triangles from its first corner, each by its share. */
function centerOf(points: readonly Vector[]): Place {
  const [a] = points;
  let [x, y, whole] = [0, 0, 0];
  for (let index = 1; index < points.length - 1; index++) {
    const [b, c] = [points[index]!, points[index + 1]!];
    const area = twiceArea([a!, b, c]);
    x += (area * (a![0] + b[0] + c[0])) / 3;
    y += (area * (a![1] + b[1] + c[1])) / 3;
    whole += area;
  }
  return [x / whole, y / whole];
}

const areaOf = ({ points }: Polygon) => Math.abs(twiceArea(points)) / 2;

const away = ([ax, ay]: Place, [bx, by]: Place) => Math.hypot(ax - bx, ay - by);

/** Whether a place lies in a convex outline. */
function holds({ points }: Polygon, [x, y]: Place): boolean {
  const sides = points.map(([ax, ay], index) => {
    const [bx, by] = points[(index + 1) % points.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

/** In the middle of the face of which most is seen, or where that middle is covered, of the piece of it nearest to there. */
function middleOfLargest(regions: readonly Region[]): Place | undefined {
  const faces = new Map<Region['face'], { area: number; x: number; y: number; polygons: Polygon[] }>();
  for (const { face, polygon } of regions) {
    const found = faces.get(face) ?? { area: 0, x: 0, y: 0, polygons: [] };
    faces.set(face, found);
    const [area, [x, y]] = [areaOf(polygon), centerOf(polygon.points)];
    if (!(area > 0)) continue;
    found.area += area;
    found.x += area * x;
    found.y += area * y;
    found.polygons.push(polygon);
  }
  const largest = [...faces.values()].reduce((most, one) => (one.area > most.area ? one : most), {
    area: least,
    x: 0,
    y: 0,
    polygons: [],
  });
  if (largest.polygons.length === 0) return undefined;
  const middle: Place = [largest.x / largest.area, largest.y / largest.area];
  return largest.polygons.some((polygon) => holds(polygon, middle))
    ? middle
    : nearestTo(middle, largest.polygons);
}

/** The center of the piece that is nearest to a place. */
const nearestTo = (place: Place, polygons: readonly Polygon[]): Place | undefined =>
  polygons
    .filter((polygon) => areaOf(polygon) > least)
    .map(({ points }) => centerOf(points))
    .sort((a, b) => away(a, place) - away(b, place))[0];

/** The middle of the nearest corner of the box, halfway up its walls: there the joint is looked for. */
function nearestCorner(shown: readonly Shown<Part>[], view: View): Place {
  const ends = shown
    .filter(({ name }) => name.name === 'front' || name.name === 'back')
    .flatMap(({ name, solid: { block }, move = (point: Vector) => point }) => {
      const x = block.x[name.name === 'front' ? 0 : 1];
      const z = (block.z[0] + block.z[1]) / 2;
      return block.y.map((y) => onSheet(view, move([x, y, z])));
    });
  const [x, y] = ends.reduce((near, one) => (one[2] < near[2] ? one : near), ends[0] ?? [0, 0, 0]);
  return [x, y];
}

/** Where a part lies that is not seen: the middle of its largest face, behind what covers it. */
function hiddenPlace(part: PartOfBox, shown: readonly Shown<Part>[], view: View): Place | undefined {
  let most = -1;
  let place: Place | undefined;
  for (const of of shown) {
    const { name, solid, move = (point: Vector) => point } = of;
    for (const { normal, cut, polygons } of facesOf(solid)) {
      if (homeOf({ name, normal, cut, of }) !== part) continue;
      for (const { points } of polygons) {
        const flat = points.map((point) => onSheet(view, move(point)));
        const area = Math.abs(twiceArea(flat));
        if (area <= most) continue;
        most = area;
        const middle = [0, 1].map((axis) => flat.reduce((sum, one) => sum + one[axis]! / flat.length, 0));
        place = [middle[0]!, middle[1]!];
      }
    }
  }
  return place;
}

/** The spot of every part. */
export function spotsOf(
  { values }: Design,
  shown: readonly Shown<Part>[],
  regions: readonly Region[],
  view: View,
): Readonly<Record<PartOfBox, Spot>> {
  const { outsideLength: L, outsideWidth: W, outsideHeight: H } = values;
  const spot = (part: PartOfBox): Spot => {
    const own = regions.filter(({ home }) => home === part);
    const at =
      part === 'corners'
        ? nearestTo(
            nearestCorner(shown, view),
            own.map(({ polygon }) => polygon),
          )
        : middleOfLargest(own);
    if (at) return { at, hidden: false };
    const [x, y] = onSheet(view, [L / 2, W / 2, part === 'lid' ? H : H / 2]);
    return { at: hiddenPlace(part, shown, view) ?? [x, y], hidden: true };
  };
  return Object.fromEntries(partsOfBox.map((part) => [part, spot(part)])) as Readonly<
    Record<PartOfBox, Spot>
  >;
}
