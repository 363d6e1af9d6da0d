/**
 * A part's shape in its place in the finished box: a block with prisms cut away.
 *
 * One set of axes for the whole box, in mm:
 *   x  along the length, 0 at the front (the end the lid slides out of), L at the back
 *   y  along the width, 0 at the left side, W at the right side
 *   z  up, 0 on the table, H at the top edge
 */
export type Axis = 'x' | 'y' | 'z';

export type Point = Readonly<Record<Axis, number>>;

/** From the low to the high end on each axis. */
export type Block = Readonly<Record<Axis, readonly [low: number, high: number]>>;

/** A convex outline in the plane of the two other axes (in the order x, y, z), drawn out along `axis`. */
export interface Prism {
  readonly axis: Axis;
  readonly from: number;
  readonly to: number;
  readonly outline: readonly (readonly [number, number])[];
  /** What it is cut for; carried along, so that the faces it leaves can be told from others. */
  readonly cutFor?: string;
}

export interface Solid {
  readonly block: Block;
  /** Cut away. They may touch each other; where they overlap, `volumeOf` counts the overlap once. */
  readonly cuts: readonly Prism[];
}

const across: Readonly<Record<Axis, readonly [Axis, Axis]>> = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] };

/** A prism with a rectangular outline: the usual slot or groove. */
export function slot(block: Block): Prism {
  const { x, y, z } = block;
  return {
    axis: 'z',
    from: z[0],
    to: z[1],
    outline: [
      [x[0], y[0]],
      [x[1], y[0]],
      [x[1], y[1]],
      [x[0], y[1]],
    ],
  };
}

/** Whether a point lies inside a prism; points on its surface count as inside. Either direction of the outline will do. */
export function inPrism({ axis, from, to, outline }: Prism, point: Point): boolean {
  if (point[axis] < from || point[axis] > to) return false;
  const [u, v] = across[axis].map((name) => point[name]) as [number, number];
  let left = false;
  let right = false;
  outline.forEach(([u1, v1], index) => {
    const [u2, v2] = outline[(index + 1) % outline.length]!;
    const side = (u2 - u1) * (v - v1) - (v2 - v1) * (u - u1);
    if (side > 0) left = true;
    if (side < 0) right = true;
  });
  return !(left && right);
}

/** Whether a point lies in the wood of a solid. */
export function inSolid({ block, cuts }: Solid, point: Point): boolean {
  for (const axis of ['x', 'y', 'z'] as const) {
    if (point[axis] < block[axis][0] || point[axis] > block[axis][1]) return false;
  }
  return !cuts.some((cut) => inPrism(cut, point));
}

/** The mirror image of a prism across the middle of a box that is `size` long on that axis. */
export function mirrored(prism: Prism, axis: 'x' | 'y', size: number): Prism {
  if (prism.axis === axis) return { ...prism, from: size - prism.to, to: size - prism.from };
  const place = across[prism.axis].indexOf(axis);
  return {
    ...prism,
    outline: prism.outline.map(([u, v]) => (place === 0 ? [size - u, v] : [u, size - v])),
  };
}

/** A prism moved up by `by`. */
export function raised(prism: Prism, by: number): Prism {
  if (by === 0) return prism;
  if (prism.axis === 'z') return { ...prism, from: prism.from + by, to: prism.to + by };
  return { ...prism, outline: prism.outline.map(([u, v]) => [u, v + by]) };
}

/** What lies between two heights, moved up by `by`. Cuts that miss it are left out. */
export function between({ block, cuts }: Solid, low: number, high: number, by: number): Solid {
  const from = Math.max(block.z[0], low);
  const to = Math.max(from, Math.min(block.z[1], high));
  return {
    block: { ...block, z: [from + by, to + by] },
    cuts: cuts
      .filter((cut) => cut.axis !== 'z' || (cut.to > from && cut.from < to))
      .map((cut) => raised(cut, by)),
  };
}
