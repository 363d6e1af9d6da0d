/**
 * A panel through a year, three strips over one calendar: the air, the moisture of the wood in it, and the gap in the
 * groove between the zone where the panel jams and the zone where it drops out. Units are a phone's pixels.
 */
import type { PanelMoisture } from '../../box/subjects/movement/panel-year.ts';
import { curveThrough, DAYS_IN_YEAR, dateOf } from '../../calc/air/year.ts';
import { panelPractice } from '../../calc/movement/panel.ts';
import type { PanelCourse } from '../../calc/movement/panel-year.ts';
import { MonthLetters, yearAxes, yearBand, yearCurve } from '../air/year-axis.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, Plot, type Span, Zone } from '../plot/Plot.tsx';

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

const percent = (value: number) => said(value, 'percent', { digits: 1 });
const spread = (values: ArrayLike<number>): Span => [
  Math.min(...Array.from(values)),
  Math.max(...Array.from(values)),
];
const around = ([low, high]: Span, least: number): Span => {
  const room = Math.max(high - low, least) * 0.12;
  return [low - room, high + room];
};

export function PanelLife({ part, humidity, moisture, life, built, groove }: PanelLifeProps) {
  const indoor = curveThrough(humidity);
  const [driest, dampest] = spread(humidity);
  const [driestWood, dampestWood] = spread(moisture.middle);
  const air = yearAxes(20, 44, around([driest, dampest], 10));
  const wood = yearAxes(90, 60, around(spread(moisture.air), 1));
  const widest = life ? Math.max(...life.play) : 0;
  const least = life ? Math.min(...life.play) : 0;
  const [low, high] = [Math.min(-0.2 * groove, least * 1.3), groove * 1.2];
  const gap = yearAxes(176, 120, [low, high]);
  const { left, right, top, bottom, x } = gap;
  // Words and marks stay inside the area; a line that leaves it is cut off.
  const y = gap.y.copy().clamp(true);
  /** The life starts on the day of building; the calendar on 1 January. */
  const playOn = (day: number) => life!.play[(day - built + DAYS_IN_YEAR) % DAYS_IN_YEAR]!;
  const hold = part === 'lid' ? panelPractice.lidEngagement : panelPractice.panelEngagementCrept;
  const first = (day: number | undefined) => (day === undefined ? undefined : dateOf(built + day));
  const [jams, drops] = [first(life?.jams), first(life?.dropsCrept)];
  return (
    <Drawing
      view={[0, 0, 350, bottom + 24]}
      title={`The ${part} through a year, built on ${dateOf(built)}`}
      description={`Indoor humidity from ${percent(driest)} to ${percent(dampest)}. Moisture of the ${part} from ${percent(driestWood)} to ${percent(dampestWood)}. ${
        life
          ? `Its play, both sides together, runs from ${said(least, 'length', { as: 'fine' })} to ${said(widest, 'length', { as: 'fine' })}; ${jams ? `it jams from ${jams}` : 'it never jams'}, ${drops ? `pushed aside it drops out from ${drops}` : 'it never drops out'}.`
          : 'There is no movement figure for this wood in this air.'
      }`}
    >
      <Label x={left} y={10} anchor="start">
        {`indoor humidity, ${percent(driest)} to ${percent(dampest)}`}
      </Label>
      <Plot on={air} />
      <path class="air-line" d={yearCurve(air, indoor)} />
      <Label x={left} y={79} anchor="start">
        {`moisture of the ${part}, ${percent(driestWood)} to ${percent(dampestWood)}`}
      </Label>
      <Plot on={wood}>
        <path
          class="spread"
          d={yearBand(
            wood,
            (day) => moisture.slow[day]!,
            (day) => moisture.fast[day]!,
          )}
        />
        <path class="air-line" d={yearCurve(wood, (day) => moisture.air[day]!)} />
        <path class="curve" d={yearCurve(wood, (day) => moisture.middle[day]!)} />
      </Plot>
      <Label x={left} y={165} anchor="start">
        {`gap in the groove: solid central, dashed crept`}
      </Label>
      <Plot on={gap}>
        <Zone on={gap} y={[groove - hold, groove]} class="held-barely" />
        <Zone on={gap} y={[groove, high]} fill="url(#jam)" />
        <Zone on={gap} y={[low, 0]} fill="url(#jam)" />
        <path class="axis" d={across(gap, { y: [0, groove] })} />
        {life && (
          <>
            <path class="hidden-line" d={yearCurve(gap, playOn)} />
            <path class="curve" d={yearCurve(gap, (day) => playOn(day) / 2)} />
          </>
        )}
      </Plot>
      <path class="thin" d={[air, wood, gap].map((strip) => across(strip, { x: [built] })).join('')} />
      {life?.jams !== undefined && (
        <circle class="mark" cx={x((built + life.jams) % DAYS_IN_YEAR)} cy={y(0)} r="4" />
      )}
      {life?.dropsCrept !== undefined && (
        <circle class="mark" cx={x((built + life.dropsCrept) % DAYS_IN_YEAR)} cy={y(groove)} r="4" />
      )}
      <NumberLabel
        class="on-lines"
        x={175}
        y={(top + y(groove)) / 2}
        value={groove}
        kind="length"
        before={`drops out${drops ? ` from ${drops}` : ''}: gap of `}
      />
      <Label class="on-lines" x={right - 6} y={y(groove - hold / 2)} anchor="end">
        rattles, barely held
      </Label>
      <Label class="on-lines" x={175} y={(bottom + y(0)) / 2}>
        {jams ? `jams from ${jams}` : 'jams'}
      </Label>
      <Label
        class="on-lines"
        x={x(built) + (built < 310 ? 5 : -5)}
        y={air.top + 10}
        anchor={built < 310 ? 'start' : 'end'}
      >
        built
      </Label>
      <MonthLetters on={gap} />
    </Drawing>
  );
}
