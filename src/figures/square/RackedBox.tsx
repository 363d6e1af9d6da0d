/**
 * A box from above, racked: the four walls, both diagonals with their lengths, and the square inside dashed behind them.
 * The lean is magnified, and says how much; the sides are in true proportion.
 */
import type { Values } from '../../box/whole/index.ts';
import { leanFromDiagonals } from '../../calc/square/diagonals.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Most that the drawn lean may shift the far end, of the length. */
const most = 0.16;
const magnifications = [50, 20, 10, 5, 2, 1] as const;

export function RackedBox({ values: v }: { values: Values }) {
  const { insideLength: a, insideWidth: b, diagonalsApart: D, wall } = v;
  const lean = leanFromDiagonals.compute({ a, b, D });
  const known = Number.isFinite(lean) && b > 0;
  const shift = known ? b * Math.sin((lean * Math.PI) / 180) : 0;
  const times = magnifications.find((one) => shift * one <= most * a) ?? 1;
  const x = shift * times;
  const width = (a + 2 * wall) * (1 + most) + a * 0.06;
  const text = textSize(width);
  /** The racked place of a corner of the square box. */
  const at = (right: number, down: number) => `${right + x * (1 - down / b)} ${down}`;
  const around = (by: number) =>
    `M${[at(-by, -by), at(a + by, -by), at(a + by, b + by), at(-by, b + by)].join('L')}Z`;
  const middle = Math.hypot(a, b);
  const exact = { digits: 1, denominator: 64 } as const;
  /** Each diagonal is labelled beside its upper half, on the outer side. */
  const [high, beside] = [b * 0.36, text * 0.6];
  return (
    <Drawing
      view={[-wall - a * 0.03, -wall - text * 0.4, width, b + 2 * wall + text * 4.4]}
      title="The box from above, racked"
      description={
        known
          ? `Its diagonals differ by ${said(D, 'length', exact)}: it is ${said(lean, 'angle', { digits: 2 })} off square, and the far end stands ${said(shift, 'length', { digits: 2 })} aside. The lean is drawn ${times} times.`
          : 'No number: the diagonals cannot differ by so much in a box of this size.'
      }
    >
      {known && (
        <>
          <path class="wood" fill-rule="evenodd" d={around(wall) + around(0)} />
          <rect class="hidden-line" x="0" y="0" width={a} height={b} fill="none" />
          <path class="curve" fill="none" d={`M${at(0, b)}L${at(a, 0)}`} />
          <path class="curve" fill="none" d={`M${at(0, 0)}L${at(a, b)}`} />
          <NumberLabel
            x={a * (1 - high / b) + x * (1 - high / b) + beside}
            y={high}
            anchor="start"
            value={middle + D / 2}
            kind="length"
            {...exact}
          />
          <NumberLabel
            x={a * (high / b) + x * (1 - high / b) - beside}
            y={high}
            anchor="end"
            value={middle - D / 2}
            kind="length"
            {...exact}
          />
        </>
      )}
      <NumberLabel
        x={-wall}
        y={b + wall + text * 1.3}
        anchor="start"
        value={lean}
        kind="angle"
        digits={2}
        before="off square by "
      />
      <Label x={-wall} y={b + wall + text * 2.8} anchor="start">
        {times > 1 ? `lean drawn ${times} times; dashed: square` : 'in true proportion; dashed: square'}
      </Label>
    </Drawing>
  );
}
