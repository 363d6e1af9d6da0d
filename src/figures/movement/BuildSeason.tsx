/**
 * Which play suits which day of building: a window that wanders through the year. Below it the panel jams on the
 * dampest day, above it drops out on the driest, pushed aside. The play of the box is a level line across it.
 */

import { dateOf } from '../../calc/air/year.ts';
import type { BuildSeason as Season } from '../../calc/movement/build-season.ts';
import { MonthLetters, yearAxes, yearBand, yearCurve } from '../air/year-axis.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, Plot } from '../plot/Plot.tsx';

export interface BuildSeasonProps {
  part: 'bottom' | 'lid';
  season: Season;
  /** What the play to leave keeps free on the dampest day, mm. */
  allowance: number;
  /** The play that the box has, both sides together, mm. */
  play: number;
  /** Day of building looked at. */
  built: number;
}

export function BuildSeason({ part, season, allowance, play, built }: BuildSeasonProps) {
  const { playToLeave, creptAtDriest, leastDay, mostDay, safe } = season;
  const needs = (day: number) => playToLeave[day % 365]!;
  /** Play at which nothing is left in the groove on the driest day. */
  const most = (day: number) => creptAtDriest[day % 365]! + play;
  const high = Math.max(...Array.from(playToLeave, (_, day) => most(day)), play, needs(mostDay)) * 1.12;
  const axes = yearAxes(10, 210, [0, high]);
  const { top, bottom, x } = axes;
  // Words and marks stay inside the area; a line that leaves it is cut off.
  const y = axes.y.copy().clamp(true);
  const words = (value: number) => said(value, 'length', { as: 'fine' });
  const spans = safe.flatMap(({ from, to }) =>
    from <= to
      ? [[from, to]]
      : [
          [from, 364],
          [0, to],
        ],
  );
  const mark = (day: number) => <circle class="mark" cx={x(day)} cy={y(needs(day))} r="4" />;
  const nearEnd = (day: number) => Math.max(60, Math.min(290, x(day)));
  return (
    <Drawing
      view={[0, 0, 350, bottom + 24]}
      title={`Play to leave beside the ${part}, by day of building`}
      description={`Least when built on ${dateOf(leastDay)}, ${words(needs(leastDay))}; most on ${dateOf(mostDay)}, ${words(needs(mostDay))}. The play of this box, ${words(play)}, ${
        safe.length === 0
          ? 'suits no day'
          : `suits ${safe.map(({ from, to }) => `${dateOf(from)} to ${dateOf(to)}`).join(' and ')}`
      }.`}
    >
      <Plot on={axes}>
        <path
          fill="url(#jam)"
          d={yearBand(
            axes,
            () => 0,
            (day) => Math.max(0, needs(day) - allowance),
          )}
        />
        <path fill="url(#jam)" d={yearBand(axes, most, () => high)} />
        <path class="curve" d={yearCurve(axes, needs)} />
        <path class="hidden-line" d={yearCurve(axes, most)} />
        <path class="thin" d={across(axes, { x: [built], y: [play] })} />
        <path class="force" d={spans.map(([from, to]) => `M${x(from!)} ${y(play)}H${x(to! + 1)}`).join('')} />
      </Plot>
      {mark(leastDay)}
      {mark(mostDay)}
      <Label class="on-lines" x={nearEnd(leastDay)} y={y(needs(leastDay)) - 14}>
        least
      </Label>
      <Label class="on-lines" x={nearEnd(mostDay)} y={y(needs(mostDay)) - 14}>
        most
      </Label>
      <NumberLabel
        class="on-lines"
        x={175}
        y={y(play) - 11}
        value={play}
        kind="length"
        as="fine"
        before="your play "
      />
      <Label class="on-lines" x={nearEnd(leastDay) > 175 ? 70 : 280} y={bottom - 12}>
        too little: jams
      </Label>
      <Label class="on-lines" x={nearEnd(leastDay) > 175 ? 280 : 70} y={top + 12}>
        too much: drops
      </Label>
      <MonthLetters on={axes} />
    </Drawing>
  );
}
