/** From what is seen of solids to path data: one path of areas for each look, one of edges for all. */

import type { Polygon, Vector } from '../../geometry/convex.ts';
import type { Axis } from '../../geometry/solid.ts';
import type { Seen } from '../../geometry/visible.ts';
import { toDecimals } from '../../units/index.ts';

const rounded = (number: number) => toDecimals(number, 2);

/** From millimeters on the sheet to user units. */
export interface Placing {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const placed = ({ scale, x, y }: Placing, [right, down]: Vector | readonly [number, number]) =>
  [rounded(x + scale * right), rounded(y + scale * down)] as const;

/** Closed areas. */
export const areas = (polygons: readonly Polygon[], placing: Placing): string =>
  polygons
    .map(({ points }) => `M${points.map((point) => placed(placing, point).join(' ')).join('L')}Z`)
    .join('');

/** Their edges, each once. */
export function edges(polygons: readonly Polygon[], placing: Placing): string {
  const found = new Set<string>();
  for (const { points, drawn } of polygons)
    points.forEach((point, index) => {
      if (!drawn[index]) return;
      const ends = [point, points[(index + 1) % points.length]!].map((end) => placed(placing, end).join(' '));
      if (ends[0] !== ends[1]) found.add(`M${ends.sort().join('L')}`);
    });
  return [...found].join('');
}

/** The axis a face looks along, as near as may be. */
export const facing = (normal: Vector): Axis => {
  const size = normal.map(Math.abs);
  return (['x', 'y', 'z'] as const)[size.indexOf(Math.max(...size))]!;
};

/** Left, top, right and bottom of all that is seen, mm on the sheet. */
export function extent(seen: readonly Seen<unknown>[]): readonly [number, number, number, number] {
  const points = seen.flatMap(({ polygons }) => polygons.flatMap(({ points }) => points));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return points.length === 0
    ? [0, 0, 1, 1]
    : [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The largest scale at which all that is seen fits so wide and so high, with its top left corner at a place. */
export function fitted(
  seen: readonly Seen<unknown>[],
  [left, top]: readonly [number, number],
  [width, height]: readonly [number, number],
): Placing & { readonly width: number; readonly height: number } {
  const [x1, y1, x2, y2] = extent(seen);
  const scale = Math.min(width / (x2 - x1), height / (y2 - y1));
  const used = scale * (x2 - x1);
  return {
    scale,
    x: left + (width - used) / 2 - scale * x1,
    y: top - scale * y1,
    width: used,
    height: scale * (y2 - y1),
  };
}
