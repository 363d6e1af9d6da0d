/**
 * A plotting area: where its numbers lie in the drawing, and the area, its zones and the paths of its lines.
 * The scales are d3's. Its shapes are not used: they would add 2 kB to each lesson, for straight lines from point to
 * point. `Axis.tsx` writes along the edges.
 */
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export type Span = readonly [from: number, to: number];

/** Edges of the area, in the drawing's user units. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A frame with its two scales: `x(value)` and `y(value)` are places in the drawing; `y` grows upward. */
export interface Axes extends Frame {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Lays stretches of numbers over a frame. What is drawn by its root or logarithm is given as such. */
export const axesOn = (frame: Frame, x: Span, y: Span): Axes => ({
  ...frame,
  x: scaleLinear(x, [frame.left, frame.right]),
  y: scaleLinear(y, [frame.bottom, frame.top]),
});

/** `parts + 1` evenly spaced numbers, both ends included. */
export const evenly = ([from, to]: Span, parts: number): number[] =>
  Array.from({ length: parts + 1 }, (_, i) => from + (i / parts) * (to - from));

const through = ({ x, y }: Axes, points: readonly Span[]): string =>
  points.map(([at, value]) => `${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('L');

/** The path of a line through points [x, y]. */
export const curve = (on: Axes, points: readonly Span[]): string => `M${through(on, points)}`;

/** The path of a band through triples [x, lower y, upper y]: there along one line, back along the other. */
export const band = (
  on: Axes,
  points: readonly (readonly [at: number, low: number, high: number])[],
): string =>
  `M${through(
    on,
    points.map(([at, low]) => [at, low]),
  )}L${through(on, points.map(([at, , high]): Span => [at, high]).reverse())}Z`;

/** The area itself. What stands inside it is cut off at its edges. */
export function Plot({ on, children }: { on: Frame; children?: ComponentChildren }) {
  const id = useId();
  const { left, right, top, bottom } = on;
  const edges = { x: left, y: top, width: right - left, height: bottom - top };
  return (
    <>
      <rect class="plot" {...edges} />
      {children && (
        <>
          <clipPath id={id}>
            <rect {...edges} />
          </clipPath>
          <g clip-path={`url(#${id})`}>{children}</g>
        </>
      )}
    </>
  );
}

/** A part of the area: between two x, two y, or both; a usual range, or where something fails. */
export function Zone({
  on,
  x,
  y,
  ...paint
}: {
  on: Axes;
  x?: Span;
  y?: Span;
  class?: string;
  fill?: string;
}) {
  const [x1, x2] = x ? x.map(on.x) : [on.left, on.right];
  const [y1, y2] = y ? y.map(on.y) : [on.bottom, on.top];
  return (
    <rect
      {...paint}
      x={Math.min(x1!, x2!)}
      y={Math.min(y1!, y2!)}
      width={Math.abs(x2! - x1!)}
      height={Math.abs(y2! - y1!)}
    />
  );
}

/** The path of lines right across the area: level at each y, upright at each x. */
export const across = (on: Axes, at: { x?: readonly number[]; y?: readonly number[] }): string =>
  [
    ...(at.y ?? []).map((value) => `M${on.left} ${on.y(value)}H${on.right}`),
    ...(at.x ?? []).map((value) => `M${on.x(value)} ${on.top}V${on.bottom}`),
  ].join('');
