/** The surface of a part's solid, and its sections: a block minus prisms as flat convex polygons. */

import {
  type Body,
  clip,
  cross,
  dot,
  type HalfSpace,
  minus,
  type Polygon,
  unit,
  type Vector,
} from './convex.ts';
import { cutFrom } from './cut.ts';
import { twiceArea } from './polygon.ts';
import type { Axis, Block, Prism, Solid } from './solid.ts';

/** One flat piece of surface; `normal` points out of the wood. */
export interface Face {
  readonly polygons: readonly Polygon[];
  readonly normal: Vector;
  /** The cut that left it; a face of the block itself has none. */
  readonly cut?: Prism | undefined;
}

const axes = ['x', 'y', 'z'] as const;
const across: Readonly<Record<Axis, readonly [Axis, Axis]>> = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] };
const axisVector = (axis: Axis, sign: 1 | -1 = 1): Vector =>
  axes.map((one) => (one === axis ? sign : 0)) as unknown as Vector;

/** Faces are sought this far inside the wood, mm, where it is plain what is cut there and what is not. */
const skin = 1e-4;

const along = (point: Vector, by: Vector, times: number): Vector => [
  point[0] + by[0] * times,
  point[1] + by[1] * times,
  point[2] + by[2] * times,
];

/** A point from its place on an axis and on the two others. */
function place(axis: Axis, on: number, [u, v]: readonly [number, number]): Vector {
  const values = { [axis]: on, [across[axis][0]]: u, [across[axis][1]]: v } as Record<Axis, number>;
  return [values.x, values.y, values.z];
}

const whole = (points: readonly Vector[]): Polygon => ({ points, drawn: points.map(() => true) });

/** A rectangle across an axis, as large as the block. */
function crossSection(block: Block, axis: Axis, on: number): Polygon {
  const [u, v] = [block[across[axis][0]], block[across[axis][1]]];
  return whole([
    place(axis, on, [u[0], v[0]]),
    place(axis, on, [u[1], v[0]]),
    place(axis, on, [u[1], v[1]]),
    place(axis, on, [u[0], v[1]]),
  ]);
}

const bodyOfBlock = (block: Block): Body =>
  axes.flatMap((axis) => [
    { n: axisVector(axis), d: block[axis][1] },
    { n: axisVector(axis, -1), d: -block[axis][0] },
  ]);

interface Wall extends HalfSpace {
  readonly points: readonly Vector[];
}

/** The walls of a prism: their outlines, and the half-spaces they close, normals pointing out of the prism. */
function wallsOf({ axis, from, to, outline }: Prism): Wall[] {
  const middle = outline.reduce<[number, number]>(
    ([u, v], point) => [u + point[0] / outline.length, v + point[1] / outline.length],
    [0, 0],
  );
  const center = place(axis, (from + to) / 2, middle);
  const caps = [from, to].map((on) => outline.map((point) => place(axis, on, point)));
  const sides = outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length]!;
    if (Math.hypot(next[0] - point[0], next[1] - point[1]) < skin) return [];
    return [
      [place(axis, from, point), place(axis, from, next), place(axis, to, next), place(axis, to, point)],
    ];
  });
  return [...caps, ...sides].map((points) => {
    const n = unit(cross(minus(points[1]!, points[0]!), minus(points[2]!, points[1]!)));
    const outward = dot(n, minus(points[0]!, center)) < 0 ? ([-n[0], -n[1], -n[2]] as const) : n;
    return { points, n: outward, d: dot(outward, points[0]!) };
  });
}

const hasRoom = ({ from, to, outline }: Prism) => to - from > skin && Math.abs(twiceArea(outline)) > skin;

/** Several drawings show the same solids. */
const known = new WeakMap<Solid, readonly Face[]>();

/** The whole surface of a solid. */
export function facesOf(solid: Solid): readonly Face[] {
  const found = known.get(solid) ?? surface(solid);
  known.set(solid, found);
  return found;
}

function surface({ block, cuts }: Solid): readonly Face[] {
  if (axes.some((axis) => block[axis][1] - block[axis][0] < skin)) return [];
  const real = cuts.filter(hasRoom);
  const prisms = real.map(wallsOf);
  const outside = axes.flatMap((axis) =>
    ([-1, 1] as const).map((sign): Face => {
      const on = sign < 0 ? block[axis][0] + skin : block[axis][1] - skin;
      return {
        normal: axisVector(axis, sign),
        polygons: cutFrom([crossSection(block, axis, on)], prisms),
      };
    }),
  );
  const body = bodyOfBlock(block);
  const inside = prisms.flatMap((prism, index) =>
    prism.map(({ points, n }): Face => {
      // Seen from the wood, just outside what is cut away.
      const seen = clip(whole(points.map((point) => along(point, n, skin))), body);
      const others = prisms.filter((_, other) => other !== index);
      return {
        normal: [-n[0], -n[1], -n[2]],
        polygons: seen ? cutFrom([seen], others) : [],
        cut: real[index],
      };
    }),
  );
  return [...outside, ...inside].filter(({ polygons }) => polygons.length > 0);
}

/** The wood a plane across an axis cuts through; nothing where it misses the solid. */
export function sectionOf({ block, cuts }: Solid, axis: Axis, on: number): readonly Polygon[] {
  if (on <= block[axis][0] || on >= block[axis][1]) return [];
  return cutFrom([crossSection(block, axis, on)], cuts.filter(hasRoom).map(wallsOf));
}
