/** How far a thin board has followed its new air, day by day; when one twice as thick has come nine tenths is guessed. */
import { diffusionOf } from '../../box/subjects/air/wait.ts';
import type { Values } from '../../box/whole/index.ts';
import { fractionDone } from '../../calc/air/diffusion-series.ts';
import { ninetyTimeBehindFilm } from '../../calc/air/film-times.ts';
import { ROOM_SURFACE } from '../../calc/air/slab.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { format, INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

/** Days that can be marked. */
export const daysRange = { low: 0, high: 30 } as const;
/** Thickness of the thin board, mm. */
const thin = { mm: 6, inch: INCH / 4 } as const;
const axes = axesOn({ left: 56, right: 336, top: 36, bottom: 206 }, [0, 30], [0, 100]);
const { x, y, bottom } = axes;
export const waitFrame: GuessFrame = {
  width: 350,
  height: 256,
  from: [x(0), y(90)],
  to: [x(daysRange.high), y(90)],
};
const place = (days: number) => placeIn(waitFrame, daysRange, days)[0];

const diffusion = (v: Values): number => {
  const D = diffusionOf(v, v.moistureToday);
  return isRefused(D) ? Number.NaN : D.middle;
};
/** Days until nine tenths of the change, of a board so many times as thick as the thin one. */
export const daysOf = (v: Values, system: UnitSystem, times: 1 | 2): number =>
  ninetyTimeBehindFilm.compute({ T: times * thin[system], D: diffusion(v), S: ROOM_SURFACE });

/** Few days are told with a tenth, so that twice the thickness shows what it costs. */
export const digitsOf = (days: number): 0 | 1 => (days < 10 ? 1 : 0);

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ThickWait({ values: v, system, mark, open }: Props) {
  const [one, two] = [thin[system], 2 * thin[system]];
  const [first, second] = [daysOf(v, system, 1), daysOf(v, system, 2)];
  const course = (thickness: number) =>
    curve(
      axes,
      evenly([0, 1], 40).map((share) => {
        const days = share ** 2 * daysRange.high;
        const done = fractionDone({ thickness, diffusion: diffusion(v), surface: ROOM_SURFACE }, days);
        return [days, isRefused(done) ? 0 : 100 * done];
      }),
    );
  const drop = (days: number, name: string) => <path class={name} d={`M${x(days)} ${y(90)}V${bottom}`} />;
  /** A board's thickness and its days, below the axis; each board has a row, so that they never meet. */
  const row = (thickness: number, value: number, down: number) => (
    <NumberLabel
      x={Math.max(axes.left + 46, Math.min(x(value), axes.right - 46))}
      y={bottom + down}
      value={value}
      kind="days"
      digits={digitsOf(value)}
      before={`${format(thickness, 'length', { system })}: `}
    />
  );
  return (
    <Drawing
      view={[0, 0, waitFrame.width, waitFrame.height]}
      title="How far two boards have followed their new air"
      description={`The board ${said(one, 'length')} thick has made nine tenths of its change after ${said(first, 'days', { digits: digitsOf(first) })}. ${
        open
          ? `The one ${said(two, 'length')} thick needs ${said(second, 'days', { digits: digitsOf(second) })}.`
          : `When the one ${said(two, 'length')} thick has is not drawn yet.`
      }`}
    >
      <Plot on={axes}>
        <path class="axis" d={across(axes, { y: [90] })} stroke-dasharray="2 3" />
        <path class="curve" d={course(one)} />
        {open && <path class="curve arrives" d={course(two)} />}
      </Plot>
      {drop(first, 'thin')}
      {row(one, first, 16)}
      <Ticks
        on={axes}
        at={[
          [0, 'none'],
          [90, '9/10'],
        ]}
        side="left"
      />
      <Label x={6} y={16} anchor="start">
        how much of its change is done
      </Label>
      {mark !== undefined && <path class="ghost bare" d={`M${place(mark)} ${axes.top}V${bottom}`} />}
      {open && (
        <g class="arrives">
          {drop(second, 'truth')}
          {row(two, second, 36)}
        </g>
      )}
      {!open && (
        <Label x={axes.left} y={bottom + 36} anchor="start">
          {`${format(two, 'length', { system })}: when?`}
        </Label>
      )}
      <NumberLabel
        x={axes.right}
        y={bottom + 16}
        anchor="end"
        value={daysRange.high}
        kind="days"
        digits={0}
      />
    </Drawing>
  );
}
