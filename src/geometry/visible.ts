/**
 * What is seen of solids from one direction: each face minus the shadows of all faces before it. Exact for solids that
 * do not run into each other, whatever their shapes, so it needs no order of painting and few elements.
 */

import { type Body, dot, minus, type Polygon, type Vector, without } from './convex.ts';
import { facesOf } from './faces.ts';
import { twiceArea } from './polygon.ts';
import type { Solid } from './solid.ts';
import { onSheet, type View } from './view.ts';

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
  readonly far: number;
  /** On the sheet. */
  readonly area: number;
  readonly body: Body;
}

interface Candidate<Name> {
  readonly face: { readonly name: Name; readonly normal: Vector };
  readonly polygon: Polygon;
  readonly shadow: Shadow;
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

function isThin({ points }: Polygon): boolean {
  let round = 0;
  for (let index = 0; index < points.length; index++) {
    const [x, y] = points[index]!;
    const next = points[index + 1] ?? points[0]!;
    round += Math.sqrt((next[0] - x) ** 2 + (next[1] - y) ** 2);
  }
  return Math.abs(twiceArea(points)) < 2 * hair * round;
}

/** All that lies behind a polygon as seen on the sheet; `front` is its normal there, toward the eye. */
function shadowOf({ points }: Polygon, front: Vector): Shadow {
  const sign = twiceArea(points) > 0 ? 1 : -1;
  const sides = points.flatMap(([x, y], index) => {
    const next = points[(index + 1) % points.length]!;
    const [dx, dy] = [next[0] - x, next[1] - y];
    const edge = Math.sqrt(dx * dx + dy * dy);
    if (edge < 1e-9) return [];
    const out: Vector = [(sign * dy) / edge, (-sign * dx) / edge, 0];
    return [{ n: out, d: out[0] * x + out[1] * y }];
  });
  return {
    box: boundsOf(points),
    near: Math.min(...points.map(([, , depth]) => depth)),
    far: Math.max(...points.map(([, , depth]) => depth)),
    area: Math.abs(twiceArea(points)) / 2,
    body: [...sides, { n: front, d: dot(front, points[0]!) - hair }],
  };
}

/** What is seen of all solids. */
export function visible<Name>(view: View, shown: readonly Shown<Name>[]): readonly Seen<Name>[] {
  const origin: Vector = [0, 0, 0];
  const all: Candidate<Name>[] = shown
    .flatMap(({ name, solid, move = (point: Vector) => point }) =>
      facesOf(solid).flatMap(({ normal, polygons }) => {
        const front = onSheet(view, minus(move(normal), move(origin)));
        if (front[2] > -1e-6) return [];
        const face = { name, normal };
        return polygons.flatMap(({ points, drawn }) => {
          const polygon = { points: points.map((point) => onSheet(view, move(point))), drawn };
          return isThin(polygon) ? [] : [{ face, polygon, shadow: shadowOf(polygon, front) }];
        });
      }),
    )
    .sort((a, b) => b.shadow.area - a.shadow.area);
  // Small ones first, each against the largest first: most of what is hidden is small, and is hidden by few. What is
  // hidden itself hides nothing that those before it do not hide.
  let before = all;
  const left = new Map<Candidate<Name>['face'], Polygon[]>();
  for (let index = all.length - 1; index >= 0; index--) {
    const candidate = all[index]!;
    const seen = lit(candidate, before);
    const known = left.get(candidate.face);
    if (seen.length === 0) before = before.filter((one) => one !== candidate);
    else if (known) known.push(...seen);
    else left.set(candidate.face, [...seen]);
  }
  return [...left].map(([{ name, normal }, polygons]) => ({ name, normal, polygons }));
}

/** What is left of a polygon behind the shadows of all others. */
function lit({ polygon, shadow: own }: Candidate<unknown>, before: readonly Candidate<unknown>[]) {
  let left: readonly Polygon[] = [polygon];
  for (const { shadow } of before) {
    const [box, other] = [own.box, shadow.box];
    const apart = other[0] >= box[2] || other[2] <= box[0] || other[1] >= box[3] || other[3] <= box[1];
    if (apart || shadow.near > own.far) continue;
    const next: Polygon[] = [];
    for (const one of left)
      for (const rest of without(one, shadow.body)) if (rest === one || !isThin(rest)) next.push(rest);
    if (next.length === 0) return next;
    left = next;
  }
  return left;
}
