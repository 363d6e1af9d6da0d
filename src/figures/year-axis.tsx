/** A calendar year across a drawing 350 units wide: days to places, paths through the days, and the months below. */
import { DAYS_IN_YEAR } from '../calc/year.ts';

export const [left, right] = [6, 344] as const;
/** Place of a day of the year, 0 to 365. */
export const xOf = (day: number) => left + ((right - left) * day) / DAYS_IN_YEAR;
/** Days that a line passes through: near enough to look smooth, few enough to be quick. */
const stops = Array.from({ length: 37 }, (_, i) => Math.round((DAYS_IN_YEAR * i) / 36));
const place = (day: number, y: number) => `${xOf(day).toFixed(1)} ${y.toFixed(1)}`;

/** A line through the year, `y` turning a day into a height. */
export const pathOf = (y: (day: number) => number): string =>
  `M${stops.map((day) => place(day, y(day))).join('L')}`;

/** The same there and back along another line: an area. */
export const areaOf = (y: (day: number) => number, back: (day: number) => number): string =>
  `${pathOf(y)}L${stops
    .map((day) => place(day, back(day)))
    .reverse()
    .join('L')}Z`;

/** First letters of the months below a plot. */
export function MonthLetters({ y }: { y: number }) {
  const places = Array.from({ length: 12 }, (_, i) => Math.round(xOf(15.2 + 30.42 * i)));
  return (
    <text class="label" x={places.join(' ')} y={y} text-anchor="middle" dominant-baseline="central">
      JFMAMJJASOND
    </text>
  );
}
