/**
 * Flat convex polygons in space and what is left of them when convex bodies are taken away. Everything a drawing of
 * solids needs rests on this one step: a surface is a face minus the cuts in it, a section a rectangle minus the cuts
 * through it, and what is hidden is a face minus the shadows of the faces before it.
 */

export type Vector = readonly [number, number, number];

/** The half of space where n·p < d, n a unit vector. */
export interface HalfSpace {
  readonly n: Vector;
  readonly d: number;
}

/** A convex body: where all its half-spaces overlap. */
export type Body = readonly HalfSpace[];

/** `drawn[i]`: whether the edge from point i to the next is an edge of the thing itself, and not one of a division. */
export interface Polygon {
  readonly points: readonly Vector[];
  readonly drawn: readonly boolean[];
}

export const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** In inner loops: plain arithmetic instead of `Math.hypot`. */
export const lengthOf = (a: Vector) => Math.sqrt(dot(a, a));
export const unit = (a: Vector): Vector => {
  const length = lengthOf(a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** Nearer than this to a plane a point lies on it, mm. */
export const touching = 1e-6;

/** The part of a polygon inside a half-space and the part outside; a cut it makes is no edge to draw. */
function split(
  { points, drawn }: Polygon,
  { n, d }: HalfSpace,
): { inside: Polygon | undefined; outside: Polygon | undefined } {
  const beyond = points.map((point) => dot(n, point) - d);
  if (beyond.every((distance) => distance <= touching)) {
    const flat = beyond.every((distance) => distance >= -touching);
    return flat
      ? { inside: undefined, outside: { points, drawn } }
      : { inside: { points, drawn }, outside: undefined };
  }
  if (beyond.every((distance) => distance >= -touching))
    return { inside: undefined, outside: { points, drawn } };
  const inside = { points: [] as Vector[], drawn: [] as boolean[] };
  const outside = { points: [] as Vector[], drawn: [] as boolean[] };
  points.forEach((point, index) => {
    const following = (index + 1) % points.length;
    const [from, to] = [beyond[index]!, beyond[following]!];
    const own = drawn[index]!;
    for (const [half, sign] of [
      [inside, 1],
      [outside, -1],
    ] as const) {
      const [here, there] = [from * sign, to * sign];
      if (here <= touching) {
        half.points.push(point);
        // From a point on the plane to one beyond it runs the division.
        half.drawn.push(here > -touching && there > touching ? false : own);
      }
      if ((here < -touching && there > touching) || (here > touching && there < -touching)) {
        const share = from / (from - to);
        const next = points[following]!;
        half.points.push([
          point[0] + share * (next[0] - point[0]),
          point[1] + share * (next[1] - point[1]),
          point[2] + share * (next[2] - point[2]),
        ]);
        half.drawn.push(here < 0 ? false : own);
      }
    }
  });
  return { inside, outside };
}

/** How far a polygon reaches beyond a half-space, mm: 0 where it lies inside, infinite where it lies wholly outside or on the border. */
function reach({ points }: Polygon, { n, d }: HalfSpace): number {
  let [low, high] = [Infinity, -Infinity];
  for (let index = 0; index < points.length; index++) {
    const beyond = dot(n, points[index]!) - d;
    if (beyond < low) low = beyond;
    if (beyond > high) high = beyond;
  }
  if (low >= -touching) return Infinity;
  return high <= touching ? 0 : high;
}

/**
 * The half-spaces of a body that a polygon reaches across, or `undefined` where it lies wholly outside one of them. That
 * beyond which most of it lies comes first: what is left of a large face round a small cut is then one large piece and
 * small ones, not slices.
 */
function crossed(polygon: Polygon, body: Body): HalfSpace[] | undefined {
  const found: HalfSpace[] = [];
  const far: number[] = [];
  for (let index = 0; index < body.length; index++) {
    const beyond = reach(polygon, body[index]!);
    if (beyond === Infinity) return undefined;
    if (beyond === 0) continue;
    let place = found.length;
    while (place > 0 && far[place - 1]! < beyond) place--;
    found.splice(place, 0, body[index]!);
    far.splice(place, 0, beyond);
  }
  return found;
}

/** What of a polygon lies in a body. */
export function clip(polygon: Polygon, body: Body): Polygon | undefined {
  const halves = crossed(polygon, body);
  if (!halves) return undefined;
  let left: Polygon | undefined = polygon;
  for (const half of halves) {
    if (!left) return undefined;
    left = split(left, half).inside;
  }
  return left;
}

/** What of a polygon lies outside a body: the polygon itself, as one, where they do not meet. */
export function without(polygon: Polygon, body: Body): readonly Polygon[] {
  const halves = crossed(polygon, body);
  if (!halves) return [polygon];
  const apart: Polygon[] = [];
  let left: Polygon | undefined = polygon;
  for (const half of halves) {
    const { inside, outside } = split(left, half);
    if (!inside) return [polygon];
    if (outside) apart.push(outside);
    left = inside;
  }
  return apart;
}
