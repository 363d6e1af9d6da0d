/** A piece weighed on several days, and the end that its course leads to, where there is one. In units of a phone's pixels. */
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, Plot } from '../plot/Plot.tsx';

export interface WeighingCourseProps {
  /** Day, counted from any day, and mass in g; in order, one or more. */
  readonly series: readonly (readonly [day: number, mass: number])[];
  /** The first and the last day as they are read. */
  readonly ends: readonly [first: string, last: string];
  /** Mass at the end, g. */
  readonly end: number | undefined;
}

const frame = { left: 76, right: 340, top: 12, bottom: 170 } as const;
const { left, right, bottom } = frame;

export function WeighingCourse({ series, ends, end }: WeighingCourseProps) {
  const masses = series.map(([, mass]) => mass);
  const all = end === undefined ? masses : [...masses, end];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max(0.1 * (high - low), 0.002 * high);
  const [first, last] = [series[0]![0], series.at(-1)![0]];
  const span = Math.max(last - first, 1);
  const axes = axesOn(frame, [first - 0.04 * span, last + 0.04 * span], [low - room, high + room]);
  return (
    <Drawing
      view={[0, 0, 350, 222]}
      title="Weight, day by day"
      description={`From ${said(masses[0]!, 'mass')} on ${ends[0]} to ${said(masses.at(-1)!, 'mass')} on ${ends[1]}.${end === undefined ? '' : ` It is on its way to about ${said(end, 'mass')}.`}`}
    >
      <Plot on={axes} />
      <AxisLines on={frame} />
      {end !== undefined && <path class="axis" d={across(axes, { y: [end] })} stroke-dasharray="2 3" />}
      {series.length > 1 && <path class="curve" d={curve(axes, series)} />}
      {series.map(([day, mass]) => (
        <circle key={day} class="measured" cx={axes.x(day)} cy={axes.y(mass)} r="4" />
      ))}
      <Ticks on={axes} at={low === high ? [low] : [low, high]} side="left" kind="mass" />
      {first === last ? (
        <Label x={(left + right) / 2} y={bottom + 15}>
          {ends[0]}
        </Label>
      ) : (
        <>
          <Label x={left} y={bottom + 15} anchor="start">
            {ends[0]}
          </Label>
          <Label x={right} y={bottom + 15} anchor="end">
            {ends[1]}
          </Label>
        </>
      )}
      {end !== undefined && (
        <Label x={left} y={bottom + 38} anchor="start">
          dotted: where it is going
        </Label>
      )}
    </Drawing>
  );
}
