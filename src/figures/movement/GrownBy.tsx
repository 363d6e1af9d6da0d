/** A bottom fitted in February and the play left beside it: how much wider it gets in the year that follows is guessed. */
import { heatedHouse, heatedLife } from '../../box/subjects/movement/heated-year.ts';
import type { MovementValues } from '../../box/subjects/movement/results.ts';
import { DAYS_IN_YEAR, moistureThrough } from '../../calc/air/year.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import type { UnitSystem } from '../../units/index.ts';
import { MonthLetters, yearCurve } from '../air/year-axis.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';
import { across, axesOn, Plot } from '../plot/Plot.tsx';

/** Growth that can be marked, mm: up to an eighth of an inch. */
export const grownRange = { low: 0, high: 3.175 } as const;
/** Days of the year: the bottom is fitted on 15 February, and dragged where the air is dampest. */
export const fittedDay = 45;
const markDay = 211;

const axes = axesOn({ left: 6, right: 300, top: 12, bottom: 196 }, [0, DAYS_IN_YEAR], [-0.35, 3.4]);
export const grownFrame: GuessFrame = {
  width: 350,
  height: 222,
  from: [axes.x(markDay), axes.y(grownRange.low)],
  to: [axes.x(markDay), axes.y(grownRange.high)],
};
const place = (mm: number) => placeIn(grownFrame, grownRange, mm)[1];

const found = moistureThrough(heatedHouse);
/** The shape of a guess: as the air goes, from nothing on the day of fitting to 1 where it is dampest. */
function shape(day: number): number {
  if (isRefused(found)) return Number.NaN;
  const [then, now, most] = [fittedDay, day % DAYS_IN_YEAR, markDay].map(found) as [number, number, number];
  return (now - then) / (most - then);
}

interface Props {
  values: MovementValues;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function GrownBy({ values: v, system, mark, open }: Props) {
  const life = heatedLife(v, 'bottom', fittedDay);
  const length = (value: number) => said(value, 'length', { as: 'fine' });
  const play = 2 * v.bottomGap;
  const limit = Math.max(axes.top, axes.y(play));
  const grown = (day: number) =>
    isRefused(life) ? Number.NaN : play - life.play[(day - fittedDay + DAYS_IN_YEAR) % DAYS_IN_YEAR]!;
  return (
    <Drawing
      view={[0, 0, grownFrame.width, grownFrame.height]}
      title="How much wider a bottom fitted in February gets"
      description={`Beside it ${length(play)} of play are left. ${
        open && !isRefused(life)
          ? `It gets ${length(life.grows)} wider.`
          : 'How much wider it gets is not drawn yet.'
      }`}
    >
      <Plot on={axes}>
        <rect fill="url(#jam)" x={axes.left} y={limit - 9} width={axes.right - axes.left} height={9} />
        <path class="thin" d={across(axes, { y: [0] })} />
        <path class="axis" d={across(axes, { y: [play] })} />
        {open && !isRefused(life) && (
          <g class="arrives">
            <path class="curve" d={yearCurve(axes, grown)} />
          </g>
        )}
        {mark !== undefined && <path class="ghost bare" d={yearCurve(axes, (day) => mark * shape(day))} />}
      </Plot>
      <circle class="mark" cx={axes.x(fittedDay)} cy={axes.y(0)} r="4.5" />
      <Label class="on-lines" x={axes.x(fittedDay) + 7} y={axes.y(0) + 9} anchor="start">
        fitted
      </Label>
      <NumberLabel
        class="on-lines"
        x={axes.left + 6}
        y={limit - 20}
        anchor="start"
        value={play}
        kind="length"
        as="fine"
        before="play "
      />
      <RuleScale
        from={[axes.right + 6, place(grownRange.low)]}
        to={[axes.right + 6, place(grownRange.high)]}
        length={grownRange.high}
        system={system}
      />
      <MonthLetters on={axes} />
    </Drawing>
  );
}
