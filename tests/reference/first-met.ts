/**
 * What a ray of light from the eye meets first among solids, by intervals along the ray: the stretch inside each block,
 * less the stretches inside its cuts. Knows nothing of faces.
 */
import type { Vector } from '../../src/geometry/convex.ts';
import type { Axis, Prism, Solid } from '../../src/geometry/solid.ts';
import type { View } from '../../src/geometry/view.ts';

type Stretch = readonly [from: number, to: number];
const everywhere: Stretch = [-Infinity, Infinity];
const index = { x: 0, y: 1, z: 2 } as const;
const others: Readonly<Record<Axis, readonly [Axis, Axis]>> = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] };

interface Ray {
  readonly from: Vector;
  readonly way: Vector;
}

/** Where a + b·t ≤ 0. */
function below(a: number, b: number): Stretch | undefined {
  if (Math.abs(b) < 1e-12) return a <= 0 ? everywhere : undefined;
  return b > 0 ? [-Infinity, -a / b] : [-a / b, Infinity];
}

const meet = (stretches: readonly (Stretch | undefined)[]): Stretch | undefined => {
  let [low, high] = everywhere;
  for (const one of stretches) {
    if (!one) return undefined;
    low = Math.max(low, one[0]);
    high = Math.min(high, one[1]);
  }
  return low < high ? [low, high] : undefined;
};

/** Within two planes across an axis. */
const between = ({ from, way }: Ray, axis: Axis, [low, high]: Stretch) => {
  const at = index[axis];
  return [below(from[at] - high, way[at]), below(low - from[at], -way[at])];
};

function inPrism(ray: Ray, { axis, from, to, outline }: Prism): Stretch | undefined {
  const [u, v] = others[axis].map((name) => index[name]) as [0 | 1 | 2, 0 | 1 | 2];
  const twice = outline.reduce((sum, [a, b], place) => {
    const [c, d] = outline[(place + 1) % outline.length]!;
    return sum + a * d - c * b;
  }, 0);
  const round = Math.sign(twice);
  const sides = outline.map(([a, b], place) => {
    const [c, d] = outline[(place + 1) % outline.length]!;
    const [nu, nv] = [round * (d - b), -round * (c - a)];
    return below(nu * (ray.from[u] - a) + nv * (ray.from[v] - b), nu * ray.way[u] + nv * ray.way[v]);
  });
  return meet([...between(ray, axis, [from, to]), ...sides]);
}

function firstIn(ray: Ray, { block, cuts }: Solid): number | undefined {
  const whole = meet((['x', 'y', 'z'] as const).flatMap((axis) => between(ray, axis, block[axis])));
  if (!whole) return undefined;
  const gone = cuts
    .map((cut) => inPrism(ray, cut))
    .filter((one) => one !== undefined)
    .sort((a, b) => a[0] - b[0]);
  let at = whole[0];
  for (const [from, to] of gone) {
    if (from > at + 1e-6) break;
    at = Math.max(at, to);
  }
  return at < whole[1] - 1e-6 ? at : undefined;
}

/** The inverse of a move of a stiff body, for a point and for a way. */
function undone(move: (point: Vector) => Vector) {
  const start = move([0, 0, 0]);
  const ways = (
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const
  ).map((axis) => move(axis).map((value, place) => value - start[place]!));
  const way = (off: readonly number[]) =>
    ways.map((one) => one.reduce((sum, value, place) => sum + value * off[place]!, 0)) as unknown as Vector;
  return { way, point: (point: Vector) => way(point.map((value, place) => value - start[place]!)) };
}

interface Thing {
  readonly solid: Solid;
  readonly move?: ((point: Vector) => Vector) | undefined;
}

/** The first of some things at a place of the sheet, right and down, and its depth there. */
export function firstMet<One extends Thing>(
  things: readonly One[],
  { right, up, into }: View,
  [x, y]: readonly [number, number],
): { readonly thing: One; readonly depth: number } | undefined {
  const from = [0, 1, 2].map((axis) => right[axis]! * x - up[axis]! * y) as unknown as Vector;
  let met: { thing: One; depth: number } | undefined;
  for (const thing of things) {
    const back = undone(thing.move ?? ((point) => point));
    const depth = firstIn({ from: back.point(from), way: back.way(into) }, thing.solid);
    if (depth !== undefined && (!met || depth < met.depth)) met = { thing, depth };
  }
  return met;
}
