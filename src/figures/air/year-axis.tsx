/** A calendar year across a drawing 350 units wide: an axis of days, points through them, and the months below. */
import { DAYS_IN_YEAR } from '../../calc/air/year.ts';
import { type Axes, axesOn, band, curve, evenly, type Span } from '../plot/Plot.tsx';

/** A plotting area from 1 January to 31 December. */
export const yearAxes = (top: number, height: number, y: Span): Axes =>
  axesOn({ left: 6, right: 344, top, bottom: top + height }, [0, DAYS_IN_YEAR], y);

/** Days that a line passes through: near enough to look smooth, few enough to be quick. */
const stops = evenly([0, DAYS_IN_YEAR], 36).map(Math.round);

/** A line through the year, `of` giving its number on a day. */
export const yearCurve = (on: Axes, of: (day: number) => number): string =>
  curve(
    on,
    stops.map((day) => [day, of(day)]),
  );

/** What lies between two such lines. */
export const yearBand = (on: Axes, low: (day: number) => number, high: (day: number) => number): string =>
  band(
    on,
    stops.map((day) => [day, low(day), high(day)]),
  );

/** First letters of the months below a plot. */
export function MonthLetters({ on }: { on: Axes }) {
  const places = Array.from({ length: 12 }, (_, i) => Math.round(on.x(15.2 + 30.42 * i)));
  return (
    <text
      class="label"
      x={places.join(' ')}
      y={on.bottom + 13}
      text-anchor="middle"
      dominant-baseline="central"
    >
      JFMAMJJASOND
    </text>
  );
}
