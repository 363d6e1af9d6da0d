/** What stands along the edges of a plotting area: its axes, and words or numbers in both units. */
import { Fragment } from 'preact';
import type { Kind } from '../../units/index.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import type { Axes, Frame } from './Plot.tsx';

/** The axis at the left and the one at the bottom, as one line. */
export const AxisLines = ({ on }: { on: Frame }) => (
  <path class="axis" fill="none" d={`M${on.left} ${on.top}V${on.bottom}H${on.right}`} />
);

interface TicksProps {
  on: Axes;
  /** Values, or values with their own words. */
  at: readonly (number | readonly [value: number, words: string])[];
  side: 'below' | 'left';
  /** With it a number is printed in the reader's units, else as it is. */
  kind?: Kind;
  digits?: 0 | 1 | 2;
  /** From the area's edge to the middle of the text below it, or to the end of the text beside it. */
  away?: number;
}

/** Numbers along an axis. */
export function Ticks({ on, at, side, kind, digits, away = side === 'below' ? 14 : 6 }: TicksProps) {
  return (
    <>
      {at.map((tick) => {
        const [value, words] = typeof tick === 'number' ? [tick, undefined] : tick;
        const place =
          side === 'below'
            ? { x: on.x(value), y: on.bottom + away }
            : { x: on.left - away, y: on.y(value), anchor: 'end' as const };
        return (
          <Fragment key={value}>
            {kind && words === undefined ? (
              <NumberLabel {...place} value={value} kind={kind} digits={digits} />
            ) : (
              <Label {...place}>{words ?? value}</Label>
            )}
          </Fragment>
        );
      })}
    </>
  );
}
