/**
 * What two finishes keep out, day by day, of the moisture that bare wood takes up: the published figures as marks, and
 * through them the line of one resistance a finish. The first days are drawn wider. Drawn in units of a phone's pixels.
 */

import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { axesOn, curve, Plot, Zone } from '../plot/Plot.tsx';

export interface Runner {
  readonly name: string;
  /** Effectiveness, %, by the days of `raceDays`; undefined for a finish that no one resistance fits. */
  readonly model: readonly number[] | undefined;
  /** Published effectiveness, %, by day of the test. */
  readonly published: readonly { readonly day: number; readonly percent: number }[];
}

/** Days of the model's line. */
export const raceDays = [
  0.1, 0.25, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8.5, 10, 12, 14, 17, 20, 24, 28, 34, 40, 48, 60,
] as const;
const last = 60;
const tested = 14;

const frame = { left: 38, right: 340, top: 10, bottom: 196 } as const;
/** Days are drawn by their roots, as moisture creeps. */
const axes = axesOn(frame, [0, Math.sqrt(last)], [0, 100]);
const { left, right, bottom, x, y } = axes;

/** A dot for the first finish, an open square for the second. */
const mark = (runner: number, cx: number, cy: number) =>
  runner === 0 ? (
    <circle key={cx} class="mark" cx={cx} cy={cy} r="4.5" />
  ) : (
    <rect key={cx} class="ready" x={cx - 4} y={cy - 4} width="8" height="8" />
  );

export function FinishRace({ runners }: { runners: readonly [Runner, Runner] }) {
  return (
    <Drawing
      view={[0, 0, 350, 272]}
      title="What a finish keeps out, day by day"
      description={runners
        .map(
          ({ name, published }) =>
            `${name}: ${published
              .map(({ day, percent }) => `${said(percent, 'percent')} after ${day} days`)
              .join(', ')}.`,
        )
        .join(' ')}
    >
      <Plot on={axes} />
      <Zone on={axes} x={[0, Math.sqrt(tested)]} class="usual" />
      {runners.map(({ name, model, published }, i) => (
        <g key={`${name}${i}`}>
          {model && (
            <path
              class={i === 0 ? 'curve' : 'narrow'}
              d={curve(
                axes,
                model.map((percent, at) => [Math.sqrt(raceDays[at]!), percent]),
              )}
            />
          )}
          {published.map(({ day, percent }) => mark(i, x(Math.sqrt(day)), y(percent)))}
        </g>
      ))}
      <AxisLines on={axes} />
      <Ticks on={axes} at={[0, 50, 100]} side="left" kind="percent" digits={0} away={5} />
      <Ticks on={axes} at={[1, 7, 14, 30, 60].map((day) => [Math.sqrt(day), `${day}`])} side="below" />
      <Label x={(left + right) / 2} y={bottom + 32}>
        days in damp air; tested in the tinted part
      </Label>
      {runners.map(({ name }, i) => (
        <g key={`legend ${i}`}>
          <line
            class={i === 0 ? 'curve' : 'narrow'}
            x1={left}
            x2={left + 26}
            y1={bottom + 52 + 18 * i}
            y2={bottom + 52 + 18 * i}
          />
          {mark(i, left + 13, bottom + 52 + 18 * i)}
          <Label x={left + 32} y={bottom + 52 + 18 * i} anchor="start">
            {name}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}
