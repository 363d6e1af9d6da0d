/**
 * Moisture of a piece day by day on its way to the moisture of its new air: the middle of what is known as a line, the
 * factor of two either way as a band, and dashed the same wood half as thick. Drawn in units of a phone's pixels.
 */
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

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

const [left, right, top, bottom] = [44, 344, 10, 200] as const;
const parts = 40;

export function WaitCourse({ every, slow, middle, fast, half, target, ninety, ready }: WaitCourseProps) {
  const days = (middle.length - 1) * every;
  const start = middle[0]!;
  const span = Math.max(Math.abs(start - target), 0.5);
  const [low, high] = [Math.min(start, target) - 0.12 * span, Math.max(start, target) + 0.12 * span];
  const x = (day: number) => left + (day / days) * (right - left);
  const y = (moisture: number) => bottom - ((moisture - low) / (high - low)) * (bottom - top);
  const points = (course: ArrayLike<number>) =>
    Array.from({ length: parts + 1 }, (_, i) => {
      // The first days change fastest: points crowd towards the start.
      const day = days * (i / parts) ** 2;
      const whole = Math.min(course.length - 2, Math.floor(day / every));
      const at = course[whole]! + (day / every - whole) * (course[whole + 1]! - course[whole]!);
      return `${x(day).toFixed(1)} ${y(at).toFixed(1)}`;
    });
  const drying = target < start;
  const say = (moisture: number) => format(moisture, 'percent', { system: 'mm' });
  const at = (day: number) => middle[Math.min(middle.length - 1, Math.round(day / every))]!;
  const above = drying ? -1 : 1;
  return (
    <Drawing
      view={[0, 0, 350, 240]}
      title="Moisture of the piece, day by day"
      description={`From ${say(start)} on arrival toward ${say(target)}. Nine tenths of the change are done after about ${Math.round(ninety)} days, give or take a factor of two.`}
    >
      <rect class="plot" x={left} y={top} width={right - left} height={bottom - top} />
      <path class="held-barely" d={`M${[...points(slow), ...points(fast).reverse()].join('L')}Z`} />
      <line class="axis" x1={left} x2={right} y1={y(target)} y2={y(target)} stroke-dasharray="2 3" />
      <path class="hidden-line" d={`M${points(half).join('L')}`} />
      <path class="curve" d={`M${points(middle).join('L')}`} />
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
      <NumberLabel x={left - 6} y={y(start)} anchor="end" value={start} kind="percent" />
      <NumberLabel x={left - 6} y={y(target)} anchor="end" value={target} kind="percent" />
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
