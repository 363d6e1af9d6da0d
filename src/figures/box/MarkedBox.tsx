/** The box with one part of it marked, small, and where a size is meant, that size: for an answer beside which it stands. */
import type { Design } from '../../box/design/design.ts';
import { type Part, type Size, wallNames } from '../../box/design/part.ts';
import type { Vector } from '../../geometry/convex.ts';
import type { Axis } from '../../geometry/solid.ts';
import { onSheet } from '../../geometry/view.ts';
import { visible } from '../../geometry/visible.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { described, isometric } from './from-design.ts';
import { edges, fitted, type Placing, placed } from './paths.ts';
import { SolidPicture } from './SolidPicture.tsx';

/** What an answer may be about; the box and its inside are not one part. */
export type PartOfAnswer =
  | 'box'
  | 'inside'
  | 'walls'
  | (typeof wallNames)[number]
  | 'bottom'
  | 'lid'
  | 'pull';

export interface Marked {
  readonly of: PartOfAnswer;
  readonly side?: keyof Size;
}

const sheet = 200;
const edge = 8;

const isMarked = ({ of }: Marked, { name }: Part): boolean =>
  of === 'walls' ? (wallNames as readonly string[]).includes(name) : of === name;
/** With its lid on, a box shows nothing of these. */
const isInside = ({ of }: Marked) => !['box', 'lid', 'pull'].includes(of);

export function MarkedBox({ design, marked }: { design: Design; marked: Marked }) {
  const pieces = design.parts.flatMap((part) => part.pieces.map((solid) => ({ name: part, solid })));
  const shown = isInside(marked) ? pieces.filter(({ solid }) => !solid.opens) : pieces;
  const own = shown.filter(({ name }) => isMarked(marked, name));
  let seen = visible(isometric, shown);
  // What the walls hide altogether is shown by itself.
  if (own.length > 0 && !seen.some(({ name }) => isMarked(marked, name))) seen = visible(isometric, own);
  if (seen.length === 0) return null;
  const placing = fitted(seen, [edge, edge], [sheet - 2 * edge, sheet * 0.7]);
  const mine = seen.filter(({ name }) => isMarked(marked, name));
  const rest = seen.filter(({ name }) => !isMarked(marked, name));
  return (
    <Drawing
      view={[0, 0, sheet, placing.height + 2 * edge]}
      title={marked.of === 'box' || marked.of === 'inside' ? 'My box' : `The ${marked.of} in my box`}
      description={described(design)}
    >
      <g class={mine.length > 0 ? 'paled' : undefined}>
        <SolidPicture seen={rest} placing={placing} />
      </g>
      {mine.length > 0 && (
        <>
          <SolidPicture seen={mine} placing={placing} />
          <path
            class="marked-edge"
            d={edges(
              mine.flatMap(({ polygons }) => polygons),
              placing,
            )}
          />
        </>
      )}
      {marked.side && own[0] && <SizeLine part={own[0].name} side={marked.side} placing={placing} />}
    </Drawing>
  );
}

/** The axis along which a part has this size. */
function axisOf({ grain, finished, pieces }: Part, side: keyof Size): Axis {
  const { block } = pieces[0]!;
  const others = (['x', 'y', 'z'] as const).filter((axis) => axis !== grain);
  const off = (axis: Axis) => Math.abs(block[axis][1] - block[axis][0] - finished.thickness);
  const [thickness, width] = others.sort((one, other) => off(one) - off(other));
  return side === 'length' && grain !== 'across the miter'
    ? grain
    : side === 'thickness'
      ? thickness!
      : width!;
}

/** A line with arrowheads from one end of a size to the other, over the middle of the largest face on which it shows; arrows from outside where it is short. */
function SizeLine({ part, side, placing }: { part: Part; side: keyof Size; placing: Placing }) {
  const { block } = part.pieces[0]!;
  const axis = axisOf(part, side);
  const size = (one: Axis) => block[one][1] - block[one][0];
  // Faces turned to the eye look along x and y to their low ends, and up.
  const across = (['x', 'y', 'z'] as const)
    .filter((one) => one !== axis)
    .sort((one, other) => size(one) - size(other))[0]!;
  const at = (end: 0 | 1) => {
    const point = (one: Axis) =>
      one === axis
        ? block[one][end]
        : one === across
          ? block[one][one === 'z' ? 1 : 0]
          : (block[one][0] + block[one][1]) / 2;
    return placed(placing, onSheet(isometric, [point('x'), point('y'), point('z')] as Vector));
  };
  const [[x1, y1], [x2, y2]] = [at(0), at(1)];
  const long = Math.hypot(x2 - x1, y2 - y1);
  const [right, down] = [(x2 - x1) / (long || 1), (y2 - y1) / (long || 1)];
  const tail = 14;
  const line = (ax: number, ay: number, bx: number, by: number) =>
    `M${ax.toFixed(1)} ${ay.toFixed(1)}L${bx.toFixed(1)} ${by.toFixed(1)}`;
  return (
    <g class="dimension size-line">
      {long > 2 * tail ? (
        <path d={line(x1, y1, x2, y2)} marker-start="url(#arrow)" marker-end="url(#arrow)" />
      ) : (
        <>
          <path d={line(x1 - right * tail, y1 - down * tail, x1, y1)} marker-end="url(#arrow)" />
          <path d={line(x2 + right * tail, y2 + down * tail, x2, y2)} marker-end="url(#arrow)" />
        </>
      )}
    </g>
  );
}
