/** A year of a heated room: what its air asks of the wood stands drawn, how far behind the bottom follows is guessed. */
import { heatedHouse, heatedYear } from '../../box/subjects/movement/heated-year.ts';
import type { MovementValues } from '../../box/subjects/movement/results.ts';
import { DAYS_IN_YEAR, dateOf, moistureThrough } from '../../calc/air/year.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { MonthLetters, yearAxes, yearBand, yearCurve } from '../air/year-axis.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Plot } from '../plot/Plot.tsx';

/** Days behind the air that can be marked. */
export const behindRange = { low: 0, high: 100 } as const;

const found = moistureThrough(heatedHouse);
/** What the air of a day asks of the wood, % MC. */
const air = isRefused(found) ? () => Number.NaN : found;
const days = Array.from({ length: DAYS_IN_YEAR }, (_, day) => air(day));
const [driest, dampest] = [Math.min(...days), Math.max(...days)];
const middle = (driest + dampest) / 2;
/** In spring the air passes its middle: there, on the way up, the wood is seen to come later. */
const spring = days.findIndex((moisture, day) => day > 0 && days[day - 1]! < middle && moisture >= middle);

const room = 0.12 * (dampest - driest);
const axes = yearAxes(30, 160, [driest - room, dampest + room]);
export const behindFrame: GuessFrame = {
  width: 350,
  height: 216,
  from: [axes.x(spring), axes.y(middle)],
  to: [axes.x(spring + behindRange.high), axes.y(middle)],
};

interface Props {
  values: MovementValues;
  mark: number | undefined;
  open: boolean;
}

export function BehindAir({ values: v, mark, open }: Props) {
  const year = heatedYear(v, 'bottom');
  const percent = (value: number) => said(value, 'percent', { digits: 1 });
  return (
    <Drawing
      view={[0, 0, behindFrame.width, behindFrame.height]}
      title="The air of a heated room through a year, and the bottom behind it"
      description={`In this air wood would settle at ${percent(driest)} in winter and ${percent(dampest)} in summer. ${
        open && !isRefused(year)
          ? `The bottom follows ${said(year.behind, 'days', { digits: 0 })} behind and is dampest on ${dateOf(year.dampestDay)}.`
          : 'How far behind the bottom follows is not drawn yet.'
      }`}
    >
      <Label x={axes.left} y={14} anchor="start">
        {`dashed: what the air asks, ${percent(driest)} to ${percent(dampest)}`}
      </Label>
      <Plot on={axes}>
        {open && !isRefused(year) && (
          <g class="arrives">
            <path
              class="spread"
              d={yearBand(
                axes,
                (day) => year.slow[day]!,
                (day) => year.fast[day]!,
              )}
            />
            <path class="curve" d={yearCurve(axes, (day) => year.middle[day]!)} />
          </g>
        )}
        {mark !== undefined && (
          <path
            class="ghost bare"
            d={yearCurve(axes, (day) => air((day - mark + DAYS_IN_YEAR) % DAYS_IN_YEAR))}
          />
        )}
        <path class="air-line" d={yearCurve(axes, (day) => air(day % DAYS_IN_YEAR))} />
      </Plot>
      {open && (
        <Label class="on-lines" x={axes.x(226)} y={axes.bottom - 26}>
          solid: the bottom
        </Label>
      )}
      <MonthLetters on={axes} />
    </Drawing>
  );
}
