/**
 * A panel through a year, three strips over one calendar: the air, the moisture of the wood in it, and the gap in the
 * groove between the zone where the panel jams and the zone where it drops out. Units are a phone's pixels.
 * Over 150 lines, because the three strips share one calendar and one day of building.
 */
import type { PanelMoisture } from '../box/panel-year.ts';
import { panelPractice } from '../calc/panel.ts';
import type { PanelCourse } from '../calc/panel-year.ts';
import { curveThrough, DAYS_IN_YEAR, dateOf } from '../calc/year.ts';
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';
import { areaOf, left, MonthLetters, pathOf, right, xOf } from './year-axis.tsx';

export interface PanelLifeProps {
  part: 'bottom' | 'lid';
  /** Relative humidity by month, %. */
  humidity: readonly number[];
  moisture: PanelMoisture;
  /** From the day of building on; missing where the wood has no figure for this air. */
  life?: PanelCourse | undefined;
  /** Day of building, 0 to 364. */
  built: number;
  /** Groove depth, mm. */
  groove: number;
}

/** Tops and heights of the three strips. */
const strips = { air: [20, 44], wood: [90, 60], gap: [176, 120] } as const;

/** Height in a strip of a value between `low` and `high`. */
const scale =
  ([top, height]: readonly [number, number], low: number, high: number) =>
  (value: number) =>
    top + height * (1 - (Math.max(low, Math.min(value, high)) - low) / (high - low));

const percent = (value: number) => format(value, 'percent', { system: 'mm', digits: 1 });
const spread = (values: ArrayLike<number>): [number, number] => [
  Math.min(...Array.from(values)),
  Math.max(...Array.from(values)),
];
const around = ([low, high]: [number, number], least: number): [number, number] => {
  const room = Math.max(high - low, least) * 0.12;
  return [low - room, high + room];
};

export function PanelLife({ part, humidity, moisture, life, built, groove }: PanelLifeProps) {
  const indoor = curveThrough(humidity);
  const [driest, dampest] = spread(humidity);
  const [driestWood, dampestWood] = spread(moisture.middle);
  const airY = scale(strips.air, ...around([driest, dampest], 10));
  const woodY = scale(strips.wood, ...around(spread(moisture.air), 1));
  const widest = life ? Math.max(...life.play) : 0;
  const least = life ? Math.min(...life.play) : 0;
  const [low, high] = [Math.min(-0.2 * groove, least * 1.3), groove * 1.2];
  const gapY = scale(strips.gap, low, high);
  const [gapTop, gapHeight] = strips.gap;
  const bottom = gapTop + gapHeight;
  /** The life starts on the day of building; the calendar on 1 January. */
  const playOn = (day: number) => life!.play[(day - built + DAYS_IN_YEAR) % DAYS_IN_YEAR]!;
  const hold = part === 'lid' ? panelPractice.lidEngagement : panelPractice.panelEngagementCrept;
  const first = (day: number | undefined) => (day === undefined ? undefined : dateOf(built + day));
  const [jams, drops] = [first(life?.jams), first(life?.dropsCrept)];
  const plot = ([top, height]: readonly [number, number]) => (
    <rect class="plot" x={left} y={top} width={right - left} height={height} />
  );
  const built0 = xOf(built);
  return (
    <Drawing
      view={[0, 0, 350, bottom + 24]}
      title={`The ${part} through a year, built on ${dateOf(built)}`}
      description={`Indoor humidity from ${percent(driest)} to ${percent(dampest)}. Moisture of the ${part} from ${percent(driestWood)} to ${percent(dampestWood)}. ${
        life
          ? `Its play, both sides together, runs from ${format(least, 'length', { system: 'mm', digits: 2 })} to ${format(widest, 'length', { system: 'mm', digits: 2 })}; ${jams ? `it jams from ${jams}` : 'it never jams'}, ${drops ? `pushed aside it drops out from ${drops}` : 'it never drops out'}.`
          : 'There is no movement figure for this wood in this air.'
      }`}
    >
      <Label x={left} y={10} anchor="start">
        {`indoor humidity, ${percent(driest)} to ${percent(dampest)}`}
      </Label>
      {plot(strips.air)}
      <path class="air-line" d={pathOf((day) => airY(indoor(day)))} />
      <Label x={left} y={79} anchor="start">
        {`moisture of the ${part}, ${percent(driestWood)} to ${percent(dampestWood)}`}
      </Label>
      {plot(strips.wood)}
      <path
        class="spread"
        d={areaOf(
          (day) => woodY(moisture.slow[day]!),
          (day) => woodY(moisture.fast[day]!),
        )}
      />
      <path class="air-line" d={pathOf((day) => woodY(moisture.air[day]!))} />
      <path class="curve" d={pathOf((day) => woodY(moisture.middle[day]!))} />
      <Label x={left} y={165} anchor="start">
        {`gap in the groove: solid central, dashed crept`}
      </Label>
      {plot(strips.gap)}
      <rect
        class="held-barely"
        x={left}
        y={gapY(groove)}
        width={right - left}
        height={Math.max(0, gapY(groove - hold) - gapY(groove))}
      />
      <rect fill="url(#jam)" x={left} y={gapTop} width={right - left} height={gapY(groove) - gapTop} />
      <rect fill="url(#jam)" x={left} y={gapY(0)} width={right - left} height={bottom - gapY(0)} />
      <path class="axis" d={`M${left} ${gapY(0)}H${right}M${left} ${gapY(groove)}H${right}`} />
      {life && (
        <>
          <path class="hidden-line" d={pathOf((day) => gapY(playOn(day)))} />
          <path class="curve" d={pathOf((day) => gapY(playOn(day) / 2))} />
        </>
      )}
      <path
        class="thin"
        d={Object.values(strips)
          .map(([top, height]) => `M${built0} ${top}v${height}`)
          .join('')}
      />
      {life?.jams !== undefined && (
        <circle class="mark" cx={xOf((built + life.jams) % DAYS_IN_YEAR)} cy={gapY(0)} r="4" />
      )}
      {life?.dropsCrept !== undefined && (
        <circle class="mark" cx={xOf((built + life.dropsCrept) % DAYS_IN_YEAR)} cy={gapY(groove)} r="4" />
      )}
      <NumberLabel
        class="on-lines"
        x={175}
        y={(gapTop + gapY(groove)) / 2}
        value={groove}
        kind="length"
        before={`drops out${drops ? ` from ${drops}` : ''}: gap of `}
      />
      <Label class="on-lines" x={right - 6} y={gapY(groove - hold / 2)} anchor="end">
        rattles, barely held
      </Label>
      <Label class="on-lines" x={175} y={(bottom + gapY(0)) / 2}>
        {jams ? `jams from ${jams}` : 'jams'}
      </Label>
      <Label
        class="on-lines"
        x={built0 + (built < 310 ? 5 : -5)}
        y={strips.air[0] + 10}
        anchor={built < 310 ? 'start' : 'end'}
      >
        built
      </Label>
      <MonthLetters y={bottom + 13} />
    </Drawing>
  );
}
