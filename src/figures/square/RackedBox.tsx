/**
 * The inside of a box from above, racked: the four walls, both diagonals with their lengths, and the square box dashed
 * behind it. The lean is magnified, and says how much; the sides are in true proportion.
 */
import type { Values } from '../../box/subjects/index.ts';
import { leanFromDiagonals } from '../../calc/square/diagonals.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Most that the drawn lean may shift the far end, of the length. */
const most = 0.2;
const magnifications = [50, 20, 10, 5, 2, 1] as const;

export function RackedBox({ values: v }: { values: Values }) {
  const { insideLength: a, insideWidth: b, diagonalsApart: D } = v;
  const lean = leanFromDiagonals.compute({ a, b, D });
  const shift = b * Math.sin((lean * Math.PI) / 180);
  const times = magnifications.find((one) => shift * one <= most * a) ?? 1;
  const view = a * 1.3;
  const text = textSize(view);
  const x = shift * times;
  const left = -a * 0.02;
  const half = Math.hypot(a, b) + D / 2;
  const exact = { digits: 1, denominator: 64 } as const;
  const known = Number.isFinite(lean);
  /** On a diagonal, a third of the way from the end at the top, clear of the crossing. */
  const third = (from: number, to: number) => from + (to - from) * 0.3;
  return (
    <Drawing
      view={[left - text, -text * 1.6, view, b + text * 5.6]}
      title="The inside of the box from above, racked"
      description={
        known
          ? `Its diagonals differ by ${said(D, 'length', exact)}: it is ${said(lean, 'angle', { digits: 2 })} off square, and the far end stands ${said(shift, 'length', { digits: 2 })} aside. The lean is drawn ${times} times.`
          : 'No number: the diagonals cannot differ by so much in a box of this size.'
      }
    >
      <rect class="hidden-line" x="0" y="0" width={a} height={b} fill="none" />
      {known && (
        <>
          <path class="outline" fill="none" d={`M${x} 0H${a + x}L${a} ${b}H0Z`} />
          <path class="curve" d={`M0 ${b}L${a + x} 0`} />
          <path class="curve" d={`M${x} 0L${a} ${b}`} />
          <NumberLabel
            x={third(a + x, 0)}
            y={third(0, b) - text * 0.4}
            anchor="end"
            value={half}
            kind="length"
            {...exact}
          />
          <NumberLabel
            x={third(x, a) + text * 0.5}
            y={third(0, b) - text * 0.4}
            anchor="start"
            value={half - D}
            kind="length"
            {...exact}
          />
        </>
      )}
      <NumberLabel
        x={0}
        y={b + text * 1.4}
        anchor="start"
        value={lean}
        kind="angle"
        digits={2}
        before="off square by "
      />
      <Label x={0} y={b + text * 2.9} anchor="start">
        {times > 1 ? `lean drawn ${times} times; dashed: square` : 'in true proportion; dashed: square'}
      </Label>
    </Drawing>
  );
}
