/** Width of a lid through a year: the bare lid's swing stands drawn, the varnished one's is guessed. */
import { varnishedYear, YEAR } from '../../box/subjects/finish/varnished-year.ts';
import type { MovementValues } from '../../box/subjects/movement/results.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

/** Share of the bare lid's swing that can be marked, %. */
export const swingRange = { low: 0, high: 100 } as const;
/** From one driest day of the bare lid to the next, and half swings of it about the middle of its width. */
const axes = axesOn({ left: 6, right: 344, top: 30, bottom: 194 }, [0, YEAR], [-1.22, 1.22]);
export const swingFrame: GuessFrame = {
  width: 350,
  height: 222,
  from: [axes.x(YEAR / 2), axes.y(0)],
  to: [axes.x(YEAR / 2), axes.y(1)],
};

/** A wave of so many half swings, so many days after that of the bare lid. */
const wave = (half: number, later: number) =>
  curve(
    axes,
    evenly([0, YEAR], 36).map((day) => [day, -half * Math.cos((2 * Math.PI * (day - later)) / YEAR)]),
  );

interface Props {
  values: MovementValues;
  mark: number | undefined;
  open: boolean;
}

export function SwingLeft({ values: v, mark, open }: Props) {
  const year = varnishedYear(v);
  if (isRefused(year)) return null;
  const { bareSwing, left, later } = year;
  const length = (value: number) => said(value, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, swingFrame.width, swingFrame.height]}
      title="Width of a lid through a year in a heated house"
      description={`Bare, the lid goes ${length(bareSwing)} from its driest day to its dampest. ${
        open
          ? `With three coats of varnish it goes ${length((bareSwing * left) / 100)}, some ${said(later, 'days', { digits: 0 })} later.`
          : 'What it does with three coats of varnish is not drawn yet.'
      }`}
    >
      <NumberLabel
        x={axes.left}
        y={14}
        anchor="start"
        value={bareSwing}
        kind="length"
        as="fine"
        before="bare lid, dashed: swings "
      />
      <Plot on={axes}>
        <path class="thin" d={across(axes, { y: [0] })} />
        {open && (
          <g class="arrives">
            <path class="curve" d={wave(left / 100, later)} />
          </g>
        )}
        {mark !== undefined && <path class="ghost bare" d={wave(mark / 100, 0)} />}
        <path class="air-line" d={wave(1, 0)} />
      </Plot>
      <Label x={axes.left + 8} y={axes.top + 13} anchor="start">
        wider
      </Label>
      {open && (
        <Label class="on-lines" x={axes.x(YEAR / 2)} y={axes.bottom - 30}>
          solid: with varnish
        </Label>
      )}
      {(['start', 'middle', 'end'] as const).map((anchor, i) => (
        <Label key={anchor} x={axes.x((i * YEAR) / 2)} y={axes.bottom + 15} anchor={anchor}>
          {['driest', 'dampest', 'driest'][i]}
        </Label>
      ))}
    </Drawing>
  );
}
