/** A dimension on the glass: its number stands level beside the line, whatever way the line runs. In px. */
import { NumberLabel } from '../../parts/Label.tsx';
import { widthOf } from '../Measured.tsx';

interface Props {
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  /** Of the line from the measured ends; negative is left or up. */
  away: number;
  value: number;
  before?: string | undefined;
  as?: 'exact' | undefined;
  numberLeft?: true | undefined;
  text: number;
}

const line = (...points: readonly (readonly [number, number])[]) =>
  `M${points.map((point) => point.map((number) => number.toFixed(1)).join(' ')).join('L')}`;

/** Shorter lengths get their arrows from outside. */
const room = 16;

export function GlassMeasure({ from, to, away, value, before = '', as, numberLeft, text }: Props) {
  const upright = Math.abs(to[0] - from[0]) < Math.abs(to[1] - from[1]);
  const sign = away < 0 ? -1 : 1;
  const at = ([x, y]: readonly [number, number], by: number): readonly [number, number] =>
    upright ? [x + by, y] : [x, y + by];
  const [start, end] = [at(from, away), at(to, away)];
  const long = upright ? Math.abs(to[1] - from[1]) : Math.abs(to[0] - from[0]);
  const way = upright ? Math.sign(end[1] - start[1]) || 1 : Math.sign(end[0] - start[0]) || 1;
  const beyond = (point: readonly [number, number], by: number): readonly [number, number] =>
    upright ? [point[0], point[1] + by * way] : [point[0] + by * way, point[1]];
  const wide = widthOf(value, text, before);
  const middle = [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2] as const;
  const isLeft = numberLeft ?? sign < 0;
  const fits = upright || long > wide + 4;
  const words = upright
    ? isLeft
      ? { x: middle[0] - 7, y: middle[1], anchor: 'end' as const }
      : { x: middle[0] + 7, y: middle[1], anchor: 'start' as const }
    : fits
      ? { x: middle[0], y: middle[1] + sign * text * 0.8 }
      : { x: Math.max(start[0], end[0]) + 15, y: middle[1], anchor: 'start' as const };
  const arrows = long >= room;
  return (
    <g class="dimension">
      {away !== 0 && (
        <path
          class="thin"
          d={
            line(at(from, sign * 2), at(from, away + sign * 3)) +
            line(at(to, sign * 2), at(to, away + sign * 3))
          }
        />
      )}
      {arrows ? (
        <path class="thin" d={line(start, end)} marker-start="url(#arrow)" marker-end="url(#arrow)" />
      ) : (
        <>
          <path class="thin" d={line(beyond(start, -12), start)} marker-end="url(#arrow)" />
          <path class="thin" d={line(beyond(end, 12), end)} marker-end="url(#arrow)" />
        </>
      )}
      <NumberLabel {...words} class="on-lines" value={value} kind="length" as={as} before={before} />
    </g>
  );
}
