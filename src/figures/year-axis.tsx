/** A calendar year across a drawing 350 units wide: days to places, paths through the days, and the months below. */
import { DAYS_IN_YEAR } from '../calc/year.ts';

export const [left, right] = [6, 344] as const;
/** Place of a day of the year, 0 to 365. */
export const xOf = (day: number) => left + ((right - left) * day) / DAYS_IN_YEAR;
const every = 5;
const place = (day: number, y: number) => `${xOf(day).toFixed(1)} ${y.toFixed(1)}`;

/** A line through a value of every fifth day, `y` turning a day into a height. */
export function pathOf(y: (day: number) => number, begin = 'M'): string {
  const points = Array.from({ length: DAYS_IN_YEAR / every + 1 }, (_, i) => place(i * every, y(i * every)));
  return begin + points.join('L');
}

/** The same there and back along another line: an area. */
export function areaOf(y: (day: number) => number, back: (day: number) => number): string {
  const points = Array.from({ length: DAYS_IN_YEAR / every + 1 }, (_, i) => {
    const day = DAYS_IN_YEAR - i * every;
    return place(day, back(day));
  });
  return `${pathOf(y)}L${points.join('L')}Z`;
}

/** First letters of the months below a plot. */
export function MonthLetters({ y }: { y: number }) {
  const places = Array.from({ length: 12 }, (_, i) => Math.round(xOf(15.2 + 30.42 * i)));
  return (
    <text class="label" x={places.join(' ')} y={y} text-anchor="middle" dominant-baseline="central">
      JFMAMJJASOND
    </text>
  );
}
