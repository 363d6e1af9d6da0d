/** Volume of solids, exactly. */
import { twiceArea } from './polygon.ts';
import type { Axis, Prism, Solid } from './solid.ts';

type Corner = readonly [number, number];
type Outline = readonly Corner[];
type Range = readonly [low: number, high: number];

/** A prism along one axis with the bounds of its outline, which goes round counterclockwise. */
interface Bounded {
  readonly along: Range;
  readonly outline: Outline;
  readonly u: Range;
  readonly v: Range;
  /** Whether the outline is the rectangle of those bounds. */
  readonly box: boolean;
}

const others: Readonly<Record<Axis, readonly [Axis, Axis]>> = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] };

function bounded(along: Range, outline: Outline): Bounded {
  let [lowU, lowV] = outline[0]!;
  let highU = lowU;
  let highV = lowV;
  for (const [u, v] of outline) {
    if (u < lowU) lowU = u;
    if (u > highU) highU = u;
    if (v < lowV) lowV = v;
    if (v > highV) highV = v;
  }
  let box = outline.length === 4;
  for (const [u, v] of outline) if ((u !== lowU && u !== highU) || (v !== lowV && v !== highV)) box = false;
  return { along, outline, u: [lowU, highU], v: [lowV, highV], box };
}

const rectangle = ([u1, u2]: Range, [v1, v2]: Range): Outline => [
  [u1, v1],
  [u2, v1],
  [u2, v2],
  [u1, v2],
];

/** The part of a convex outline inside another one. */
function clipped(outline: Outline, by: Outline): Outline {
  let left = outline;
  for (let edge = 0; edge < by.length && left.length > 0; edge++) {
    const [u1, v1] = by[edge]!;
    const [u2, v2] = by[(edge + 1) % by.length]!;
    const aside = ([u, v]: Corner) => (u2 - u1) * (v - v1) - (v2 - v1) * (u - u1);
    const next: Corner[] = [];
    let here = left.at(-1)!;
    let a = aside(here);
    for (const there of left) {
      const b = aside(there);
      if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
        const share = a / (a - b);
        next.push([here[0] + share * (there[0] - here[0]), here[1] + share * (there[1] - here[1])]);
      }
      if (b >= 0) next.push(there);
      here = there;
      a = b;
    }
    left = next;
  }
  return left;
}

const meet = (a: Range, b: Range): Range => [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
const apart = (a: Range, b: Range) => a[0] >= b[1] || b[0] >= a[1];
const within = (a: Range, b: Range) => a[0] >= b[0] && a[1] <= b[1];

/** What two prisms along the same axis share; `undefined` for nothing. */
function shared(a: Bounded, b: Bounded): Bounded | undefined {
  if (apart(a.along, b.along) || apart(a.u, b.u) || apart(a.v, b.v)) return undefined;
  const along = meet(a.along, b.along);
  if (b.box && within(a.u, b.u) && within(a.v, b.v)) return { ...a, along };
  if (a.box && b.box) return bounded(along, rectangle(meet(a.u, b.u), meet(a.v, b.v)));
  const outline = clipped(a.outline, b.outline);
  return outline.length > 2 ? bounded(along, outline) : undefined;
}

/** Volume that prisms fill together, overlaps counted once: each adds what the ones before it do not fill yet. */
function filled(prisms: readonly Bounded[]): number {
  let volume = 0;
  prisms.forEach((prism, index) => {
    const [low, high] = prism.along;
    volume += ((high - low) * twiceArea(prism.outline)) / 2;
    const before: Bounded[] = [];
    for (let earlier = 0; earlier < index; earlier++) {
      const part = shared(prism, prisms[earlier]!);
      if (part) before.push(part);
    }
    if (before.length > 0) volume -= filled(before);
  });
  return volume;
}

/** A cut as a prism along `axis`, which is its own unless it is a box. */
function turned({ axis, from, to, outline }: Prism, along: Axis): Bounded {
  if (axis === along) {
    const round = twiceArea(outline) < 0 ? [...outline].reverse() : outline;
    return bounded([from, to], round);
  }
  const { u, v } = bounded([from, to], outline);
  const [first, second] = others[axis];
  const extent = { [axis]: [from, to], [first]: u, [second]: v } as Record<Axis, Range>;
  const [newU, newV] = others[along];
  return bounded(extent[along], rectangle(extent[newU], extent[newV]));
}

/**
 * Volume of a solid, mm³, exactly.
 * All its cuts must be prisms along one axis, save those with rectangular outlines.
 */
export function volumeOf({ block, cuts }: Solid): number {
  const whole = (block.x[1] - block.x[0]) * (block.y[1] - block.y[0]) * (block.z[1] - block.z[0]);
  if (cuts.length === 0) return whole;
  const slanted = cuts.find((cut) => !bounded([cut.from, cut.to], cut.outline).box);
  const axis = slanted?.axis ?? 'z';
  const [first, second] = others[axis];
  const frame = bounded(block[axis], rectangle(block[first], block[second]));
  const inside: Bounded[] = [];
  for (const cut of cuts) {
    const part = shared(turned(cut, axis), frame);
    if (part) inside.push(part);
  }
  return whole - filled(inside);
}

/** Area of an outline, mm²; either direction will do. */
export const areaOf = (outline: Outline): number => Math.abs(twiceArea(outline)) / 2;
