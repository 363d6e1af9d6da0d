/**
 * A dimension as ISO 129 draws it: two thin lines carry the measured ends out of the object, a line with arrowheads
 * between them, and the number above it, read from the bottom or from the right. Where the number has no room it
 * stands over the line's own extension, and the arrows point inward from outside.
 */
import { NumberLabel } from '../parts/Label.tsx';
import { bothUnits } from '../parts/Quantity.tsx';

export interface MeasuredProps {
  /** The measured ends, at the object, in user units; level or upright. */
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  /** From the object to the line: down or right where positive. */
  away: number;
  value: number;
  /** Height of the text in user units. */
  text: number;
  /** The end at which a number without room stands; its own direction goes on beyond the ends. */
  outside?: 'from' | 'to';
  before?: string;
}

/** Width of a number as printed, in user units: about half its height for each sign. */
export const widthOf = (value: number, text: number, before = '') => {
  const { mm, inch = '' } = bothUnits(value, 'length', { as: 'size' });
  return (before.length + Math.max(mm.length, inch.length)) * text * 0.52;
};

export function Measured({ from, to, away, value, text, outside = 'to', before = '' }: MeasuredProps) {
  const upright = Math.abs(to[0] - from[0]) < Math.abs(to[1] - from[1]);
  /** A place so far along the line from the measured start, and so far from the object. */
  const run = upright ? to[1] - from[1] : to[0] - from[0];
  const at = (along: number, off: number): readonly [number, number] =>
    upright ? [from[0] + off, from[1] + along] : [from[0] + along, from[1] + off];
  const line = (a: readonly [number, number], b: readonly [number, number]) =>
    `M${a.map((n) => n.toFixed(1)).join(' ')}L${b.map((n) => n.toFixed(1)).join(' ')}`;
  const long = Math.abs(run);
  const sign = Math.sign(run) || 1;
  const side = Math.sign(away) || 1;
  const wide = widthOf(value, text, before);
  const fits = long > wide + 16;
  const arrows = long > 18;
  const end = outside === 'to' ? 1 : 0;
  const out = outside === 'to' ? sign : -sign;
  const reach = wide + (arrows ? 6 : 18);
  const middle = fits ? run / 2 : end * run + out * (reach - wide / 2);
  const [x, y] = at(middle, away);
  return (
    <g class="dimension">
      <path
        class="thin"
        d={
          line(at(0, side * 2), at(0, away + side * 3)) +
          line(at(run, side * 2), at(run, away + side * 3)) +
          (fits ? '' : line(at(end * run, away), at(end * run + out * reach, away)))
        }
      />
      {arrows ? (
        <path
          class="thin"
          d={line(at(0, away), at(run, away))}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
      ) : (
        <>
          <path class="thin" d={line(at(-sign * 12, away), at(0, away))} marker-end="url(#arrow)" />
          <path class="thin" d={line(at(run + sign * 12, away), at(run, away))} marker-end="url(#arrow)" />
        </>
      )}
      <NumberLabel
        x={upright ? x - text * 0.62 : x}
        y={upright ? y : y - text * 0.62}
        turn={upright ? -90 : undefined}
        value={value}
        kind="length"
        as="size"
        before={before}
      />
    </g>
  );
}
