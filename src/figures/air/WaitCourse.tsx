/**
 * Moisture of a piece day by day on its way to the moisture of its new air: the middle of what is known as a line, the
 * factor of two either way as a band, and dashed the same wood half as thick. Drawn in units of a phone's pixels.
 */

import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { across, axesOn, band, curve, evenly, Plot } from '../plot/Plot.tsx';

export interface WaitCourseProps {
  /** Days from one entry of a course to the next. */
  readonly every: number;
  /** Mean moisture (%) from arrival on: the slow end, the middle and the fast end of what is known. */
  readonly slow: ArrayLike<number>;
  readonly middle: ArrayLike<number>;
  readonly fast: ArrayLike<number>;
  /** The same wood half as thick. */
  readonly half: ArrayLike<number>;
  /** % MC that it settles to. */
  readonly target: number;
  /** Day on which nine tenths are done, and on which two weighings agree. */
  readonly ninety: number;
  readonly ready: number | undefined;
}

const frame = { left: 44, right: 344, top: 10, bottom: 200 } as const;
const { left, right, bottom } = frame;
// The first days change fastest: points crowd towards the start.
const shares = evenly([0, 1], 40).map((share) => share ** 2);

export function WaitCourse({ every, slow, middle, fast, half, target, ninety, ready }: WaitCourseProps) {
  const days = (middle.length - 1) * every;
  const start = middle[0]!;
  const span = Math.max(Math.abs(start - target), 0.5);
  const room = 0.12 * span;
  const axes = axesOn(frame, [0, days], [Math.min(start, target) - room, Math.max(start, target) + room]);
  const { x, y } = axes;
  /** Of a course, on a day that may lie between two of its entries. */
  const on = (course: ArrayLike<number>, day: number) => {
    const whole = Math.min(course.length - 2, Math.floor(day / every));
    return course[whole]! + (day / every - whole) * (course[whole + 1]! - course[whole]!);
  };
  const through = (course: ArrayLike<number>) =>
    curve(
      axes,
      shares.map((share) => [share * days, on(course, share * days)]),
    );
  const drying = target < start;
  const say = (moisture: number) => said(moisture, 'percent');
  const at = (day: number) => middle[Math.min(middle.length - 1, Math.round(day / every))]!;
  const above = drying ? -1 : 1;
  return (
    <Drawing
      view={[0, 0, 350, 240]}
      title="Moisture of the piece, day by day"
      description={`From ${say(start)} on arrival toward ${say(target)}. Nine tenths of the change are done after about ${Math.round(ninety)} days, give or take a factor of two.`}
    >
      <Plot on={axes} />
      <path
        class="held-barely"
        d={band(
          axes,
          shares.map((share) => [share * days, on(slow, share * days), on(fast, share * days)]),
        )}
      />
      <path class="axis" d={across(axes, { y: [target] })} stroke-dasharray="2 3" />
      <path class="hidden-line" d={through(half)} />
      <path class="curve" d={through(middle)} />
      {ready !== undefined && ready <= days && (
        <>
          <circle class="ready" cx={x(ready)} cy={y(at(ready))} r="5" />
          <Label
            class="on-lines"
            x={Math.min(x(ready) + 8, right - 96)}
            y={y(at(ready)) + above * 16}
            anchor="start"
          >
            weighings agree
          </Label>
        </>
      )}
      {ninety <= days && (
        <>
          <line class="thin" x1={x(ninety)} x2={x(ninety)} y1={y(at(ninety))} y2={bottom} />
          <Label x={Math.max(left + 26, Math.min(x(ninety), right - 60))} y={bottom + 14}>
            9/10
          </Label>
        </>
      )}
      <Ticks on={axes} at={[start, target]} side="left" kind="percent" />
      <NumberLabel x={right} y={bottom + 14} anchor="end" value={days} kind="days" />
      <Label x={left} y={bottom + 32} anchor="start">
        dashed: half as thick
      </Label>
      <Label x={right} y={bottom + 32} anchor="end">
        gray: half to twice as fast
      </Label>
    </Drawing>
  );
}
