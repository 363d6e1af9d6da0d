/** The play of a sliding lid over ten years, one swing of the air a year: left alone, or changed by one event in the fourth year. */
import { playAt } from '../../box/subjects/movement/panel-state.ts';
import type { Values } from '../../box/whole/index.ts';
import { equilibriumMoisture } from '../../calc/air/moisture.ts';
import { panelPractice } from '../../calc/movement/panel.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, evenly, Plot, Zone } from '../plot/Plot.tsx';

/** What happens in the fourth year. */
export const events = {
  nothing: 'nothing',
  planed: 'planed in its dampest week',
  drier: 'moved to drier air',
  damper: 'moved to damper air',
} as const;
export type Event = keyof typeof events;

/** How much drier or damper the other house is, % of humidity. */
export const otherHouse = 15;
/** Years after which the lid is planed, in the dampest week, or the box moves. */
const when = 3.5;
const years = 10;

/** Moisture of the lid so many years on, %: a plain wave from driest to dampest and back; what air is made of is in the lesson on it. */
function moistureAt(v: Values, event: Event, year: number): number {
  const wave = (1 - Math.cos(2 * Math.PI * year)) / 2;
  const shift = year < when ? 0 : event === 'drier' ? -otherHouse : event === 'damper' ? otherHouse : 0;
  const of = (humidity: number) =>
    equilibriumMoisture(v.temperature, Math.max(5, Math.min(95, humidity + shift)));
  return of(v.humidityDry) + (of(v.humidityDamp) - of(v.humidityDry)) * wave;
}

/** Play, mm; planed in the dampest week it gets the play of today once more. */
export const playIn = (v: Values, event: Event, year: number): number =>
  playAt(v, 'lid', moistureAt(v, event, year)) +
  (event === 'planed' && year >= when ? Math.max(0, v.lidPlayToday - v.lidPlayDamp) : 0);

/** Least and most play in the years after the event, mm. */
export function extremesAfter(v: Values, event: Event): { least: number; most: number } {
  const plays = evenly([5, 6], 48).map((year) => playIn(v, event, year));
  return { least: Math.min(...plays), most: Math.max(...plays) };
}

export function TenYears({ values: v, event }: { values: Values; event: Event }) {
  const groove = v.lidGrooveDepth;
  const high = Math.max(groove * 1.15, extremesAfter(v, event).most * 1.1);
  const low = Math.min(-0.25 * groove, extremesAfter(v, event).least * 1.15);
  const axes = axesOn({ left: 8, right: 342, top: 24, bottom: 204 }, [0, years], [low, high]);
  const { x, y, left, bottom } = axes;
  const hold = groove - panelPractice.lidEngagement;
  const points = evenly([0, years], 480).map((year) => [year, playIn(v, event, year)] as const);
  const known = points.every(([, play]) => Number.isFinite(play));
  const { least, most } = extremesAfter(v, event);
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, 350, bottom + 40]}
      title="The play of a lid over ten years"
      description={
        known
          ? `In the fourth year: ${events[event]}. After it the play, both sides together, goes from ${fine(least)} to ${fine(most)}.`
          : 'There is no movement figure for this wood in this air.'
      }
    >
      <Label x={left} y={10} anchor="start">
        play of the lid, both sides together
      </Label>
      <Plot on={axes}>
        <Zone on={axes} y={[low, 0]} fill="url(#jam)" />
        {high > hold && <Zone on={axes} y={[hold, groove]} class="held-barely" />}
        {high > groove && <Zone on={axes} y={[groove, high]} fill="url(#jam)" />}
        <path
          class="hidden-line"
          d={across(axes, { x: event === 'nothing' ? [] : [when], y: [0, groove] })}
        />
        {known && <path class="curve" d={curve(axes, points)} />}
      </Plot>
      <Label class="on-lines" x={x(years) - 6} y={(y(low) + y(0)) / 2} anchor="end">
        jams
      </Label>
      <Label class="on-lines" x={x(years) - 6} y={(y(hold) + y(groove)) / 2} anchor="end">
        barely held
      </Label>
      <Label class="on-lines" x={x(years) - 6} y={(y(groove) + y(high)) / 2} anchor="end">
        out of its groove
      </Label>
      {!known && (
        <Label x={175} y={110}>
          no figure for this wood in this air
        </Label>
      )}
      <Ticks on={axes} at={[0, 2, 4, 6, 8, 10]} side="below" />
      <Label x={175} y={bottom + 31}>
        years
      </Label>
    </Drawing>
  );
}
