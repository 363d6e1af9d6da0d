/** Volume of solids, exactly, and the mass of parts. */
import type { Part } from './part.ts';
import type { Plan } from './plan.ts';
import { practice } from './practice.ts';
import type { Axis, Prism, Solid } from './solid.ts';

type Corner = readonly [number, number];
type Outline = readonly Corner[];

const others: Readonly<Record<Axis, readonly [Axis, Axis]>> = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] };

function area(outline: Outline): number {
  let twice = 0;
  for (let index = 0; index < outline.length; index++) {
    const [u1, v1] = outline[index]!;
    const [u2, v2] = outline[(index + 1) % outline.length]!;
    twice += u1 * v2 - u2 * v1;
  }
  return Math.abs(twice) / 2;
}

/** The part of a convex outline inside another convex outline that goes round counterclockwise. */
function clipped(outline: Outline, by: Outline): Outline {
  let left = outline;
  for (let edge = 0; edge < by.length && left.length > 0; edge++) {
    const [u1, v1] = by[edge]!;
    const [u2, v2] = by[(edge + 1) % by.length]!;
    const aside = ([u, v]: Corner) => (u2 - u1) * (v - v1) - (v2 - v1) * (u - u1);
    const next: Corner[] = [];
    for (let index = 0; index < left.length; index++) {
      const here = left[index]!;
      const there = left[(index + 1) % left.length]!;
      const a = aside(here);
      const b = aside(there);
      if (a >= 0) next.push(here);
      if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
        const share = a / (a - b);
        next.push([here[0] + share * (there[0] - here[0]), here[1] + share * (there[1] - here[1])]);
      }
    }
    left = next;
  }
  return left;
}

const isBox = ({ outline }: Prism) =>
  outline.length === 4 &&
  outline.every(([u, v], index) => {
    const [u2, v2] = outline[(index + 1) % 4]!;
    return u === u2 || v === v2;
  });

const counterclockwise = (low: Corner, high: Corner): Outline => [
  low,
  [high[0], low[1]],
  high,
  [low[0], high[1]],
];

/** A box-shaped prism as a prism along another axis. */
function along(prism: Prism, axis: Axis): Prism {
  if (prism.axis === axis) return prism;
  const extent = {} as Record<Axis, readonly [number, number]>;
  const [u, v] = others[prism.axis];
  const us = prism.outline.map(([value]) => value);
  const vs = prism.outline.map(([, value]) => value);
  extent[prism.axis] = [prism.from, prism.to];
  extent[u] = [Math.min(...us), Math.max(...us)];
  extent[v] = [Math.min(...vs), Math.max(...vs)];
  const [first, second] = others[axis];
  const outline = counterclockwise(
    [extent[first][0], extent[second][0]],
    [extent[first][1], extent[second][1]],
  );
  return { axis, from: extent[axis][0], to: extent[axis][1], outline };
}

const turned = (outline: Outline): Outline => {
  let twice = 0;
  outline.forEach(([u1, v1], index) => {
    const [u2, v2] = outline[(index + 1) % outline.length]!;
    twice += u1 * v2 - u2 * v1;
  });
  return twice < 0 ? [...outline].reverse() : outline;
};

/** Area covered by convex outlines together, overlaps counted once: A ∪ B = A + B − A ∩ B, taken one outline after the other. */
function covered(outlines: readonly Outline[]): number {
  let sum = 0;
  outlines.forEach((outline, index) => {
    const shared = outlines
      .slice(0, index)
      .map((earlier) => clipped(outline, earlier))
      .filter((part) => part.length > 2);
    sum += area(outline) - (shared.length > 0 ? covered(shared) : 0);
  });
  return sum;
}

/**
 * Volume of a solid, mm³, exactly: it is sliced where a cut begins or ends, and each slice has one outline.
 * All cuts must be prisms along one axis, save those with rectangular outlines.
 */
export function volumeOf({ block, cuts }: Solid): number {
  const axis = cuts.find((cut) => !isBox(cut))?.axis ?? 'z';
  const [first, second] = others[axis];
  const frame = counterclockwise([block[first][0], block[second][0]], [block[first][1], block[second][1]]);
  const [low, high] = block[axis];
  const prisms = cuts
    .map((cut) => along(cut, axis))
    .filter(({ from, to }) => to > low && from < high)
    .map(({ from, to, outline }) => ({ from, to, outline: clipped(turned(outline), frame) }))
    .filter(({ outline }) => outline.length > 2);
  const levels = [low, high, ...prisms.flatMap(({ from, to }) => [from, to])]
    .filter((level) => level >= low && level <= high)
    .sort((a, b) => a - b);
  let volume = 0;
  for (let index = 1; index < levels.length; index++) {
    const from = levels[index - 1]!;
    const to = levels[index]!;
    if (to <= from) continue;
    const middle = (from + to) / 2;
    const here = prisms
      .filter((prism) => prism.from < middle && prism.to > middle)
      .map(({ outline }) => outline);
    volume += (to - from) * (area(frame) - covered(here));
  }
  return volume;
}

/** Mass of all parts, g, the wood at 12 % moisture; `undefined` where the wood's density is not known. */
export function massOf({ values }: Plan, parts: readonly Part[]): number | undefined {
  const density = values.woodDensity / 1000;
  let mass = 0;
  for (const { pieces, material } of parts)
    for (const piece of pieces)
      mass += (volumeOf(piece) / 1000) * (material === 'solid' ? density : practice.plywoodDensity);
  return Number.isFinite(mass) && mass > 0 ? mass : undefined;
}
