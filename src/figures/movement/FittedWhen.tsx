/** A lid in the year after it was fitted: its play on that day stands drawn, what becomes of it when the guess is open. */
import { heatedLife } from '../../box/subjects/movement/heated-year.ts';
import type { MovementValues } from '../../box/subjects/movement/results.ts';
import { DAYS_IN_YEAR, dateOf } from '../../calc/air/year.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, axesOn, curve, evenly, Plot, Zone } from '../plot/Plot.tsx';

/** Days of the year on which the lids are fitted. */
export const fittings: Readonly<Record<string, number>> = { february: 31, may: 120, august: 226 };
export const lidFitted = (v: MovementValues, option: string) => heatedLife(v, 'lid', fittings[option]!);

/** The one that jams; of several the tightest, and nothing if none does. */
export function tightest(v: MovementValues): string {
  const least = (option: string) => {
    const life = lidFitted(v, option);
    return isRefused(life) ? Number.NaN : Math.min(...life.play);
  };
  const option = Object.keys(fittings).reduce((most, one) => (least(one) < least(most) ? one : most));
  return least(option) < 0 ? option : '';
}

/** Play that fits in the drawing, mm. */
const span = [-0.5, 2.2] as const;
const axes = axesOn({ left: 4, right: 146, top: 4, bottom: 96 }, [0, DAYS_IN_YEAR], span);
const stops = evenly([0, DAYS_IN_YEAR], 36).map(Math.round);

interface Props {
  values: MovementValues;
  option: string;
  open: boolean;
}

export function FittedWhen({ values: v, option, open }: Props) {
  const life = lidFitted(v, option);
  const length = (value: number) => said(value, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, 150, 100]}
      title={`A lid fitted on ${dateOf(fittings[option]!)}, through the year after`}
      description={
        open && !isRefused(life)
          ? `Its play goes from ${length(life.fitted)} down to ${length(Math.min(...life.play))}${life.jams === undefined ? '.' : ': it jams.'}`
          : `Its play on that day is ${length(v.lidPlay)}. What becomes of it is not drawn yet.`
      }
    >
      <Plot on={axes}>
        <Zone on={axes} y={[span[0], 0]} fill="url(#jam)" />
        <path class="axis" d={across(axes, { y: [0] })} />
        {open && !isRefused(life) ? (
          <g class="arrives">
            <path
              class="curve"
              d={curve(
                axes,
                stops.map((day) => [day, life.play[day]!]),
              )}
            />
          </g>
        ) : (
          <path class="hidden-line" d={across(axes, { y: [v.lidPlay] })} />
        )}
      </Plot>
      <circle class="mark" cx={axes.left + 3} cy={axes.y(Math.min(v.lidPlay, span[1]))} r="3.5" />
    </Drawing>
  );
}
