/** A plot of the reader's own: one expression over one name, with a mark where it is read. */
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, Plot, type Span } from '../plot/Plot.tsx';

interface Scale {
  readonly unit: string;
  readonly by: number;
  readonly plus: number;
}
type Side = Readonly<Record<UnitSystem, Scale>>;

export interface OwnPlotProps {
  /** Pieces of the line without gaps. */
  pieces: readonly (readonly Span[])[];
  x: Side;
  y: Side;
  system: UnitSystem;
  /** The name that changes, and what is plotted, as written. */
  over: string;
  text: string;
  /** The point that is read, in the same numbers as the pieces. */
  at: Span | undefined;
}

/** What stands along the axes: at most four figures. */
export const figuresOf = (value: number): string => String(Number(value.toPrecision(4))).replace('-', '−');

const spanOf = (values: readonly number[]): Span => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  // A line that stays where it is lies in the middle.
  const room = high > low ? (high - low) * 0.06 : Math.abs(high) * 0.1 || 1;
  return [low - room, high + room];
};

/** @returns the number of a value in the reader's units, with its unit */
export const readOff = (value: number, { by, plus, unit }: Scale): string =>
  `${figuresOf(value * by + plus)}${unit === '°' || unit === '' ? '' : '\u00a0'}${unit}`;

export function OwnPlot({ pieces, x, y, system, over, text, at }: OwnPlotProps) {
  const [sx, sy] = [x[system], y[system]];
  const shown = pieces.map((piece) =>
    piece.map(([a, b]): Span => [a * sx.by + sx.plus, b * sy.by + sy.plus]),
  );
  const points = shown.flat();
  const [first, last] = [points[0]!, points.at(-1)!];
  const ySpan = spanOf(points.map(([, b]) => b));
  const xSpan: Span = first[0] < last[0] ? [first[0], last[0]] : spanOf([first[0]]);
  const axes = axesOn({ left: 56, right: 338, top: 26, bottom: 184 }, xSpan, ySpan);
  const mark: Span | undefined = at && [at[0] * sx.by + sx.plus, at[1] * sy.by + sy.plus];
  const ticks = (of: typeof axes.x, count: number) =>
    of.ticks(count).map((value) => [value, figuresOf(value)] as const);
  const values = points.map(([, b]) => b);
  const said = (value: number, { unit }: Scale) => `${figuresOf(value)} ${unit}`.trim();
  const short = text.length > 38 ? `${text.slice(0, 37)}…` : text;
  return (
    <Drawing
      view={[0, 0, 350, 226]}
      title={`${short} over ${over}`}
      description={`${over} goes from ${said(first[0], sx)} to ${said(last[0], sx)}. It begins at ${said(first[1], sy)} and ends at ${said(last[1], sy)}; the lowest is ${said(Math.min(...values), sy)}, the highest ${said(Math.max(...values), sy)}.`}
    >
      <Plot on={axes}>
        {ticks(axes.y, 4).map(([value]) => (
          <path key={value} class="grid-line" d={across(axes, { y: [value] })} />
        ))}
        {shown.map((piece) => (
          <path key={piece[0]![0]} class="curve" fill="none" d={curve(axes, piece)} />
        ))}
      </Plot>
      <AxisLines on={axes} />
      <Ticks on={axes} side="below" at={ticks(axes.x, 4)} />
      <Ticks on={axes} side="left" at={ticks(axes.y, 4)} />
      <Label x={6} y={10} anchor="start">
        {sy.unit ? `${short}, ${sy.unit}` : short}
      </Label>
      <Label x={axes.right} y={216} anchor="end">
        {sx.unit ? `${over}, ${sx.unit}` : over}
      </Label>
      {mark && <circle class="mark" cx={axes.x(mark[0])} cy={axes.y(mark[1])} r="4.5" />}
    </Drawing>
  );
}
