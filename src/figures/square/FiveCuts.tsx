/**
 * Five cuts around a panel: the order of its edges, and the strip that the fifth cut takes off, its two widths measured.
 * The panel is a sketch; the taper of the strip is magnified, and says how much.
 */
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

export interface FiveCutsProps {
  values: {
    /** Widths of the strip at the end cut first and at the other, and the length between them, mm. */
    readonly stripFirst: number;
    readonly stripOther: number;
    readonly stripLength: number;
    /** Degrees. */
    readonly fenceError: number;
  };
}

/** The panel on its sheet. */
const [left, top, side] = [40, 30, 150] as const;
/** The strip below it. */
const [stripTop, stripLong, stripHigh] = [250, 270, 26] as const;
/** The edge of the nth cut: where its number stands. */
const edges = [
  { cut: 1, x: left + side / 2, y: top - 14 },
  { cut: 2, x: left + side + 16, y: top + side / 2 },
  { cut: 3, x: left + side / 2, y: top + side + 14 },
  { cut: 4, x: left - 16, y: top + side / 2 },
] as const;

export function FiveCuts({
  values: { stripFirst: A, stripOther: B, stripLength: L, fenceError },
}: FiveCutsProps) {
  const taper = A - B;
  const times = [100, 50, 20, 10, 5, 2, 1].find((one) => (Math.abs(taper) * one * stripLong) / L <= 20) ?? 1;
  const drawn = (taper * times * stripLong) / L;
  const [first, other] = [stripHigh + drawn / 2, stripHigh - drawn / 2];
  const exact = { digits: 2, denominator: 1000 } as const;
  return (
    <Drawing
      view={[0, 0, 350, 350]}
      title="Five cuts around a panel"
      description={`Four edges are cut in turn, each held to the fence for the next cut. The fifth cut takes a strip off the first edge, ${said(A, 'length', exact)} wide where it was cut first and ${said(B, 'length', exact)} at its other end. The fence is ${said(Math.abs(fenceError), 'angle', { digits: 3 })} off square.`}
    >
      <rect class="wood" x={left} y={top} width={side} height={side} />
      <line class="curve" x1={left} x2={left + side} y1={top + 16} y2={top + 16} />
      {edges.map(({ cut, x, y }) => (
        <Label key={cut} x={x} y={y}>
          {cut}
        </Label>
      ))}
      <Label x={left + side / 2} y={top + 32}>
        5
      </Label>
      <Label x={left} y={stripTop - 26} anchor="start">
        the strip of the fifth cut:
      </Label>
      <path class="wood-end" d={`M${left} ${stripTop}h${stripLong}v${other}L${left} ${stripTop + first}Z`} />
      <NumberLabel
        x={left}
        y={stripTop + stripHigh + 28}
        anchor="start"
        value={A}
        kind="length"
        {...exact}
        before="A "
      />
      <NumberLabel
        x={left + stripLong}
        y={stripTop + stripHigh + 28}
        anchor="end"
        value={B}
        kind="length"
        {...exact}
        before="B "
      />
      <Label x={left} y={stripTop + stripHigh + 52} anchor="start">
        {times > 1 ? `taper drawn ${times} times; cut first at A` : 'in true proportion; cut first at A'}
      </Label>
    </Drawing>
  );
}
