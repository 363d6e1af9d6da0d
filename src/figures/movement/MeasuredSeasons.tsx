/**
 * One thing of a box, measured on several days, beside what was predicted for them: filled dots with the tool's reading
 * as bars, and open squares on a dashed line. Drawn in units of a phone's pixels.
 */
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { axesOn, curve, Plot } from '../plot/Plot.tsx';

export interface SeasonPoint {
  /** Any count of days. */
  readonly day: number;
  /** The day as it is read. */
  readonly words: string;
  /** mm; a prediction that could not be made is left out. */
  readonly measured: number;
  readonly predicted: number | undefined;
  /** What the tool reads to, mm. */
  readonly reading: number;
}

export interface MeasuredSeasonsProps {
  readonly label: string;
  /** In order of the days, one or more. */
  readonly points: readonly SeasonPoint[];
}

const frame = { left: 76, right: 340, top: 12, bottom: 170 } as const;
const { left, right, bottom } = frame;

export function MeasuredSeasons({ label, points }: MeasuredSeasonsProps) {
  const [first, last] = [points[0]!, points.at(-1)!];
  const heights = points.flatMap(({ measured, predicted, reading }) => [
    measured - reading,
    measured + reading,
    ...(predicted === undefined ? [] : [predicted]),
  ]);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const room = Math.max(0.1 * (high - low), 0.02);
  const span = Math.max(last.day - first.day, 1);
  const axes = axesOn(frame, [first.day - 0.06 * span, last.day + 0.06 * span], [low - room, high + room]);
  const { x, y } = axes;
  const fine = { as: 'exact' } as const;
  const known = points.flatMap(({ day, predicted }) =>
    predicted === undefined ? [] : [[day, predicted] as const],
  );
  return (
    <Drawing
      view={[0, 0, 350, 222]}
      title={`Measured and predicted: ${label}`}
      description={points
        .map(
          ({ words, measured, predicted }) =>
            `${words}: measured ${said(measured, 'length', fine)}${predicted === undefined ? '' : `, predicted ${said(predicted, 'length', fine)}`}.`,
        )
        .join(' ')}
    >
      <Plot on={axes} />
      <AxisLines on={frame} />
      {known.length > 1 && <path class="hidden-line" d={curve(axes, known)} />}
      {known.map(([day, predicted], at) => (
        <rect key={at} class="predicted" x={x(day) - 5} y={y(predicted) - 5} width="10" height="10" />
      ))}
      {points.length > 1 && (
        <path
          class="curve"
          d={curve(
            axes,
            points.map(({ day, measured }) => [day, measured] as const),
          )}
        />
      )}
      {points.map(({ day, measured, reading }, at) => (
        <g key={at}>
          <line class="thin" x1={x(day)} x2={x(day)} y1={y(measured - reading)} y2={y(measured + reading)} />
          <circle class="measured" cx={x(day)} cy={y(measured)} r="4" />
        </g>
      ))}
      <Ticks on={axes} at={[low, high]} side="left" kind="length" digits={2} />
      {first === last || first.words === last.words ? (
        <Label x={(left + right) / 2} y={bottom + 15}>
          {first.words}
        </Label>
      ) : (
        <>
          <Label x={left} y={bottom + 15} anchor="start">
            {first.words}
          </Label>
          <Label x={right} y={bottom + 15} anchor="end">
            {last.words}
          </Label>
        </>
      )}
      <circle class="measured" cx={left + 6} cy={bottom + 38} r="4" />
      <Label x={left + 16} y={bottom + 38} anchor="start">
        measured
      </Label>
      <rect class="predicted" x={left + 131} y={bottom + 33} width="10" height="10" />
      <Label x={left + 148} y={bottom + 38} anchor="start">
        predicted
      </Label>
    </Drawing>
  );
}
