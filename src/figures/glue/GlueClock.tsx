/**
 * Two bars on one clock: the trial without glue, and the glue-up with its spreading before. Behind both the open time;
 * what comes after it is hatched. One unit is one px at the narrowest width.
 */
import { Label } from '../parts/Label.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { axesOn } from '../plot/Plot.tsx';

export const clockSheet = [350, 214] as const;
const [trialRow, glueRow, thick] = [62, 128, 26] as const;

/** Axes of a clock that goes to so many minutes. */
export const clockAxes = (minutes: number) =>
  axesOn({ left: 18, right: 334, top: 30, bottom: 170 }, [0, minutes], [0, 1]);

interface Props {
  /** Minutes: the whole of the clock, the trial, spreading alone, and the open time. */
  until: number;
  trial: number;
  spreading: number;
  openTime: number;
  faces: number;
  otherSteps: number;
  /** Whether the second bar is drawn. */
  wet: boolean;
}

export function GlueClock({ until, trial, spreading, openTime, faces, otherSteps, wet }: Props) {
  const on = clockAxes(until);
  const at = (minutes: number) => on.x(Math.min(minutes, until));
  const end = spreading + trial;
  /** Lines between equal parts of a bar; more than forty would be a gray. */
  const parts = (from: number, to: number, count: number, y: number) =>
    count > 1 && count <= 80
      ? Array.from({ length: count - 1 }, (_, i) => from + ((i + 1) / count) * (to - from))
          .filter((minutes) => minutes < until)
          .map((minutes) => `M${at(minutes).toFixed(1)} ${y}v${thick}`)
          .join('')
      : '';
  const bar = (name: string, from: number, to: number, count: number, y: number) => (
    <>
      <rect class={name} x={at(from)} y={y} width={at(to) - at(from)} height={thick} />
      <path class="hatch" d={parts(from, to, count, y)} />
    </>
  );
  return (
    <>
      <rect class="usual" x={on.left} y={on.top} width={at(openTime) - on.left} height={on.bottom - on.top} />
      <Label x={on.left} y={16} anchor="start">
        {`open time: ${openTime} minutes`}
      </Label>
      <Label class="on-lines" x={on.left + 6} y={trialRow - 12} anchor="start">
        the trial, without glue
      </Label>
      {bar('wood', 0, trial, otherSteps, trialRow)}
      <Label class="on-lines" x={on.left + 6} y={glueRow - 12} anchor="start">
        with glue
      </Label>
      {wet && (
        <g class="arrives">
          {bar('wood-end', 0, spreading, faces, glueRow)}
          {bar('wood', spreading, end, otherSteps, glueRow)}
          {end > openTime && openTime < until && (
            <rect
              class="part-finger"
              fill="url(#jam)"
              x={at(openTime)}
              y={glueRow}
              width={at(end) - at(openTime)}
              height={thick}
            />
          )}
        </g>
      )}
      <path class="axis" d={`M${on.left} ${on.bottom}H${on.right}`} />
      <Ticks on={on} at={[0, 1, 2, 3, 4].map((quarter) => (quarter / 4) * until)} side="below" />
      <Label x={on.right} y={on.bottom + 34} anchor="end">
        minutes
      </Label>
    </>
  );
}
