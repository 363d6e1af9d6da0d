/** The growth-ring figure on all faces that are seen, as one path: lines of the log where each face lay in it. */

import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import { toLog } from '../../box/stock/grain-places.ts';
import { type Stock, stockOf } from '../../box/stock/stock.ts';
import { type LogPoint, madeUpLog } from '../../calc/board/rings.ts';
import { type Polygon, unit, type Vector } from '../../geometry/convex.ts';
import { undone } from '../../geometry/move.ts';
import { twiceArea } from '../../geometry/polygon.ts';
import type { Axis, Point } from '../../geometry/solid.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import type { SeenFace } from '../../geometry/visible.ts';
import { grainLines } from '../board/grain-lines.ts';
import { facing, type Placing, placed } from '../box/paths.ts';

/** Made up: no tree was measured. Finer rings than the lesson's log, as small boxes are made from. */
const log = madeUpLog(7, { ringWidth: 3.5 });

/** Smaller faces and ends show no figure, mm² on the sheet. */
const least = 120;
const leastEnd = 15;

const areaOf = ({ points }: Polygon) => Math.abs(twiceArea(points)) / 2;

/** The part of a straight line inside a convex polygon, as shares of its length. */
function inside(
  [ax, ay]: Vector,
  [bx, by]: Vector,
  { points }: Polygon,
): readonly [number, number] | undefined {
  const middle = [0, 1].map((axis) => points.reduce((sum, point) => sum + point[axis]! / points.length, 0));
  let [low, high] = [0, 1];
  for (let index = 0; index < points.length; index++) {
    const [px, py] = points[index]!;
    const [qx, qy] = points[(index + 1) % points.length]!;
    const side = (x: number, y: number) => (qx - px) * (y - py) - (qy - py) * (x - px);
    const sign = Math.sign(side(middle[0]!, middle[1]!));
    const [from, to] = [sign * side(ax, ay), sign * side(bx, by)];
    if (from < 0 && to < 0) return undefined;
    if (from < 0) low = Math.max(low, from / (from - to));
    else if (to < 0) high = Math.min(high, from / (from - to));
    if (low >= high) return undefined;
  }
  return [low, high];
}

/** Several drawings of one box, and its parts one by one, lie on the same boards. */
const stocks = new WeakMap<Design, Stock>();

/** Path data of all lines, in the drawing's units. @param ends whether end grain shows its rings too */
export function faceGrain(
  design: Design,
  seen: readonly SeenFace<Part>[],
  view: View,
  placing: Placing,
  ends = false,
): string {
  const stock = stocks.get(design) ?? stockOf(design);
  stocks.set(design, stock);
  const isEnd = ({ name: part, normal }: SeenFace<Part>) => part.grain === facing(normal);
  return seen
    .filter((face) => face.name.material === 'solid' && (ends || !isEnd(face)))
    .filter(
      (face) =>
        face.polygons.reduce((sum, polygon) => sum + areaOf(polygon), 0) > (isEnd(face) ? leastEnd : least),
    )
    .map((face) => linesOn(face, design, stock, view, placing))
    .join('');
}

const axes = ['x', 'y', 'z'] as const;
const unmoved = (point: Vector): Vector => point;

function linesOn(
  { name: part, normal, polygons, of: { solid, move = unmoved } }: SeenFace<Part>,
  design: Design,
  stock: Stock,
  view: View,
  placing: Placing,
): string {
  const { right, up, into } = view;
  const back = undone(move);
  const inBox = ([x, y, depth]: Vector): Point => {
    const [px, py, pz] = [0, 1, 2].map(
      (axis) => right[axis]! * x - up[axis]! * y + into[axis]! * depth,
    ) as unknown as Vector;
    const [bx, by, bz] = back([px, py, pz]);
    return { x: bx, y: by, z: bz };
  };
  const points = polygons.flatMap((polygon) => polygon.points.map(inBox));
  const first = points[0]!;
  const place = toLog(design, stock, part, part.pieces.find((piece) => piece === solid) ?? part.pieces[0]!);
  const across = facing(normal);
  if (!place || part.grain === 'across the miter') return '';
  // Along the grain and across it, or on an end in both ways across it.
  const u: Axis = part.grain === across ? axes.find((axis) => axis !== across)! : part.grain;
  const v = axes.find((axis) => axis !== u && axis !== across)!;
  const range = (axis: Axis) => {
    const all = points.map((point) => point[axis]);
    return [Math.min(...all), Math.max(...all)] as const;
  };
  const [[u0, u1], [v0, v1]] = [range(u), range(v)];
  const corner: Point = { ...first, [u]: u0, [v]: v0 };
  const origin = place(corner);
  const toward = (axis: Axis): LogPoint => {
    const moved = place({ ...corner, [axis]: corner[axis] + 1 });
    return unit([moved[0] - origin[0], moved[1] - origin[1], moved[2] - origin[2]]);
  };
  const lines = grainLines(
    { origin, along: toward(u), across: toward(v), length: u1 - u0, width: v1 - v0 },
    log,
  );
  return lines
    .map((line) => {
      const ends = line.map(([du, dv]): Vector => {
        const spot: Point = { ...corner, [u]: u0 + du, [v]: v0 + dv };
        return onSheet(view, move([spot.x, spot.y, spot.z]));
      });
      return polygons.map((polygon) => strokes(ends, polygon, placing)).join('');
    })
    .join('');
}

/** A line clipped to a polygon: as few moves of the pen as it needs. */
function strokes(line: readonly Vector[], polygon: Polygon, placing: Placing): string {
  let d = '';
  let pen = '';
  for (let index = 1; index < line.length; index++) {
    const [from, to] = [line[index - 1]!, line[index]!];
    const found = inside(from, to, polygon);
    if (!found) continue;
    const [start, end] = found.map((share) =>
      placed(placing, [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])])
        .map((number) => number.toFixed(1))
        .join(' '),
    );
    d += start === pen ? `L${end}` : `M${start}L${end}`;
    pen = end!;
  }
  return d;
}
