/** What three coats of varnish kept out after one day stands drawn; what they keep out after fourteen is guessed. */
import { varnish } from '../../box/subjects/finish/varnished-year.ts';
import { effectivenessAfter } from '../../calc/finish/finish.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

/** Share kept out that can be marked, %. */
export const keptOutRange = { low: 0, high: 100 } as const;
/** Days of the published figures. */
const tested = [1, 7, 14] as const;
const [firstDay, , lastDay] = tested;
export const keptOutAfter = (day: (typeof tested)[number]): number => varnish.published[tested.indexOf(day)]!;

/** Days are drawn by their roots, as moisture creeps. */
const lastRoot = 4;
const axes = axesOn({ left: 46, right: 316, top: 14, bottom: 190 }, [0, lastRoot], [0, 100]);
const at = (day: number) => Math.round(axes.x(Math.sqrt(day)));
export const keptOutFrame: GuessFrame = {
  width: 350,
  height: 232,
  from: [at(lastDay), axes.bottom],
  to: [at(lastDay), axes.top],
};
const place = (percent: number) => placeIn(keptOutFrame, keptOutRange, percent)[1];

/** The line of one resistance through the published figures, from one day to another. */
const line = (from: number, to: number) =>
  curve(
    axes,
    evenly([Math.sqrt(from), Math.sqrt(to)], 16).map((root) => [
      root,
      effectivenessAfter(root ** 2, varnish.resistance),
    ]),
  );

interface Props {
  mark: number | undefined;
  open: boolean;
}

export function KeptOut({ mark, open }: Props) {
  const percent = (value: number) => said(value, 'percent', { digits: 0 });
  const dot = (day: (typeof tested)[number]) => (
    <circle key={day} class="mark" cx={at(day)} cy={place(keptOutAfter(day))} r="4.5" />
  );
  return (
    <Drawing
      view={[0, 0, keptOutFrame.width, keptOutFrame.height]}
      title="What three coats of varnish keep out of a block in damp air"
      description={`${percent(keptOutAfter(firstDay))} of the bare block’s gain after one day${
        open
          ? `, ${percent(keptOutAfter(7))} after seven, ${percent(keptOutAfter(lastDay))} after fourteen.`
          : '. What is kept out after fourteen days is not drawn yet.'
      }`}
    >
      <Plot on={axes} />
      <path class="hidden-line" d={`M${at(lastDay)} ${axes.top}V${axes.bottom}`} />
      <path class="curve" d={line(0.1, firstDay)} />
      {dot(firstDay)}
      {mark !== undefined && (
        <path
          class="ghost bare"
          d={`M${at(firstDay)} ${place(keptOutAfter(firstDay))}L${at(lastDay)} ${place(mark)}`}
        />
      )}
      <NumberLabel
        class="on-lines"
        x={at(firstDay)}
        y={place(keptOutAfter(firstDay)) + 18}
        value={keptOutAfter(firstDay)}
        kind="percent"
        digits={0}
      />
      {open && (
        <g class="arrives">
          <path class="curve" d={line(firstDay, lastDay)} />
          {dot(7)}
          {dot(14)}
        </g>
      )}
      {open && (
        <NumberLabel
          class="on-lines"
          x={at(lastDay) - 10}
          y={place(keptOutAfter(lastDay)) + 14}
          anchor="end"
          value={keptOutAfter(lastDay)}
          kind="percent"
          digits={0}
        />
      )}
      <AxisLines on={axes} />
      <Ticks on={axes} at={[0, 50, 100]} side="left" kind="percent" digits={0} away={5} />
      <Ticks
        on={axes}
        at={[
          [0, '0'],
          [1, 'day 1'],
          [Math.sqrt(7), '7'],
          [Math.sqrt(lastDay), '14'],
        ]}
        side="below"
      />
      <Label x={(axes.left + axes.right) / 2} y={axes.bottom + 32}>
        days in damp air
      </Label>
    </Drawing>
  );
}
