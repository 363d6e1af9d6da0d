/**
 * What is seen of solids from one direction: each face minus the shadows of all faces before it. Exact for solids that
 * do not run into each other, whatever their shapes, so it needs no order of painting and few elements.
 */
import type { Solid } from '../../box/parts/solid.ts';
import { type Body, cross, dot, minus, type Polygon, unit, type Vector, without } from './convex.ts';
import { facesOf } from './faces.ts';

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

/** Something to draw: a solid, moved as a stiff body where `move` says so. */
export interface Shown<Name> {
  readonly name: Name;
  readonly solid: Solid;
  readonly move?: ((point: Vector) => Vector) | undefined;
}

/** What is seen of one face, on the sheet, and which way it looks in the solid's own axes. */
export interface Seen<Name> {
  readonly name: Name;
  readonly normal: Vector;
  readonly polygons: readonly Polygon[];
}

interface Shadow {
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
  readonly near: number;
  readonly body: Body;
}

/** Nearer than this in depth a face hides nothing, and a strip that is thinner is not drawn: mm. */
const hair = 0.02;

function boundsOf(points: readonly Vector[]): Shadow['box'] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return [left, top, right, bottom];
}

/** Twice the area on the sheet, with sign. */
const areaOf = (points: readonly Vector[]) =>
  points.reduce((sum, [x, y], index) => {
    const next = points[(index + 1) % points.length]!;
    return sum + x * next[1] - y * next[0];
  }, 0);

const isThin = ({ points }: Polygon) => {
  const round = points.reduce((sum, point, index) => {
    const next = points[(index + 1) % points.length]!;
    return sum + Math.hypot(next[0] - point[0], next[1] - point[1]);
  }, 0);
  return Math.abs(areaOf(points)) < 2 * hair * round;
};

/** All that lies behind a polygon as seen on the sheet. */
function shadowOf({ points }: Polygon): Shadow | undefined {
  const n = cross(minus(points[1]!, points[0]!), minus(points.at(-1)!, points[0]!));
  const length = Math.hypot(...n);
  if (!(length > 1e-9) || Math.abs(n[2] / length) < 1e-6) return undefined;
  // Out of the picture, so that what lies behind is inside the half-space.
  const scale = (n[2] < 0 ? 1 : -1) / length;
  const front: Vector = [n[0] * scale, n[1] * scale, n[2] * scale];
  const sign = areaOf(points) > 0 ? 1 : -1;
  const sides = points.flatMap(([x, y], index) => {
    const next = points[(index + 1) % points.length]!;
    const [dx, dy] = [next[0] - x, next[1] - y];
    const edge = Math.hypot(dx, dy);
    if (edge < 1e-9) return [];
    const out: Vector = [(sign * dy) / edge, (-sign * dx) / edge, 0];
    return [{ n: out, d: out[0] * x + out[1] * y }];
  });
  return {
    box: boundsOf(points),
    near: Math.min(...points.map(([, , depth]) => depth)),
    body: [...sides, { n: front, d: dot(front, points[0]!) - hair }],
  };
}

/** What is seen of all solids. */
export function visible<Name>(view: View, shown: readonly Shown<Name>[]): readonly Seen<Name>[] {
  const origin: Vector = [0, 0, 0];
  const faces = shown.flatMap(({ name, solid, move = (point: Vector) => point }) =>
    facesOf(solid)
      .filter(({ normal }) => dot(view.into, minus(move(normal), move(origin))) < -1e-6)
      .map(({ normal, polygons }) => ({
        name,
        normal,
        polygons: polygons.map(({ points, drawn }) => ({
          points: points.map((point) => onSheet(view, move(point))),
          drawn,
        })),
      })),
  );
  // The largest first: most of what is hidden is hidden by few faces.
  const shadows = faces
    .flatMap(({ polygons }) => polygons)
    .map((polygon) => ({ polygon, area: Math.abs(areaOf(polygon.points)) }))
    .sort((a, b) => b.area - a.area)
    .flatMap(({ polygon }) => shadowOf(polygon) ?? []);
  return faces
    .map((face) => ({ ...face, polygons: face.polygons.flatMap((polygon) => lit(polygon, shadows)) }))
    .filter(({ polygons }) => polygons.length > 0);
}

function lit(polygon: Polygon, shadows: readonly Shadow[]): readonly Polygon[] {
  let left: readonly Polygon[] = [polygon];
  const [x1, y1, x2, y2] = boundsOf(polygon.points);
  const far = Math.max(...polygon.points.map(([, , depth]) => depth));
  for (const { box, near, body } of shadows) {
    if (near > far || box[0] >= x2 || box[2] <= x1 || box[1] >= y2 || box[3] <= y1) continue;
    left = left.flatMap((one) => without(one, body));
    if (left.length === 0) return left;
  }
  return left.filter((one) => !isThin(one));
}
