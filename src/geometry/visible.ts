/**
 * What is seen of solids from one direction: each face minus the shadows of all faces before it. Exact for solids that
 * do not run into each other, whatever their shapes, so it needs no order of painting and few elements.
 */

import { type Body, dot, type HalfSpace, type Polygon, type Vector, without } from './convex.ts';
import { facesOf } from './faces.ts';
import { type Move, turnedBy } from './move.ts';
import { twiceArea } from './polygon.ts';
import type { Prism, Solid } from './solid.ts';
import { atOnce, type Steps } from './steps.ts';
import { onSheet, type View } from './view.ts';

/** Something to draw: a solid, moved as a stiff body where `move` says so. */
export interface Shown<Name> {
  readonly name: Name;
  readonly solid: Solid;
  readonly move?: Move | undefined;
}

/** What is seen of one face, on the sheet, and which way it looks in the solid's own axes. */
export interface Seen<Name> {
  readonly name: Name;
  readonly normal: Vector;
  readonly polygons: readonly Polygon[];
}

export interface SeenFace<Name> extends Seen<Name> {
  /** The cut that left it; a face of the block itself has none. */
  readonly cut: Prism | undefined;
  readonly of: Shown<Name>;
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
  readonly face: Omit<SeenFace<Name>, 'polygons'>;
  readonly polygon: Polygon;
  readonly shadow: Shadow;
}

/** Nearer than this in depth a face hides nothing, and a strip that is thinner is not drawn: mm. */
const hair = 0.02;

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
  const twice = twiceArea(points);
  const sign = twice > 0 ? 1 : -1;
  // Most that overlaps on the sheet lies behind, not before: that is soonest found out.
  const body: HalfSpace[] = [{ n: front, d: dot(front, points[0]!) - hair }];
  let [left, top, right, bottom, near, far] = [Infinity, Infinity, -Infinity, -Infinity, Infinity, -Infinity];
  for (let index = 0; index < points.length; index++) {
    const [x, y, depth] = points[index]!;
    const next = points[index + 1] ?? points[0]!;
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
    if (depth < near) near = depth;
    if (depth > far) far = depth;
    const dx = next[0] - x;
    const dy = next[1] - y;
    const edge = Math.sqrt(dx * dx + dy * dy);
    if (edge < 1e-9) continue;
    const out: Vector = [(sign * dy) / edge, (-sign * dx) / edge, 0];
    body.push({ n: out, d: out[0] * x + out[1] * y });
  }
  return { box: [left, top, right, bottom], near, far, area: Math.abs(twice) / 2, body };
}

/** What one solid may show, before anything covers it. */
function candidatesOf<Name>(view: View, of: Shown<Name>): Candidate<Name>[] {
  const { name, solid, move = (point: Vector) => point } = of;
  return facesOf(solid).flatMap(({ normal, polygons, cut }) => {
    const front = onSheet(view, turnedBy(of.move, normal));
    if (front[2] > -1e-6) return [];
    const face = { name, normal, cut, of };
    return polygons.flatMap(({ points, drawn }) => {
      const polygon = { points: points.map((point) => onSheet(view, move(point))), drawn };
      return isThin(polygon) ? [] : [{ face, polygon, shadow: shadowOf(polygon, front) }];
    });
  });
}

/** What is seen of all solids. */
export const visible = <Name>(view: View, shown: readonly Shown<Name>[]): readonly SeenFace<Name>[] =>
  atOnce(visibleInSteps(view, shown));

/** The same, with a pause possible after each small step. */
export function* visibleInSteps<Name>(
  view: View,
  shown: readonly Shown<Name>[],
): Steps<readonly SeenFace<Name>[]> {
  const all: Candidate<Name>[] = [];
  for (const of of shown) {
    all.push(...candidatesOf(view, of));
    yield;
  }
  all.sort((a, b) => b.shadow.area - a.shadow.area);
  // Small ones first, each against the largest first: most of what is hidden is small, and is hidden by few. What is
  // hidden itself hides nothing that those before it do not hide.
  const before = all.map(({ shadow }) => shadow);
  const left = new Map<Candidate<Name>['face'], Polygon[]>();
  for (let index = all.length - 1; index >= 0; index--) {
    const candidate = all[index]!;
    const seen = lit(candidate, before);
    const known = left.get(candidate.face);
    if (seen.length === 0) before.splice(index, 1);
    else if (known) known.push(...seen);
    else left.set(candidate.face, [...seen]);
    yield;
  }
  return [...left].map(([face, polygons]) => ({ ...face, polygons }));
}

/** What is left of a polygon behind shadows. */
function lit({ polygon, shadow: own }: Candidate<unknown>, before: readonly Shadow[]) {
  const [left, top, right, bottom] = own.box;
  let seen: readonly Polygon[] = [polygon];
  for (let index = 0; index < before.length; index++) {
    const { box, near, body } = before[index]!;
    if (box[0] >= right || box[2] <= left || box[1] >= bottom || box[3] <= top || near > own.far) continue;
    const next: Polygon[] = [];
    for (const one of seen)
      for (const rest of without(one, body)) if (rest === one || !isThin(rest)) next.push(rest);
    if (next.length === 0) return next;
    seen = next;
  }
  return seen;
}
