/** The walls of one row on the reader's board, with the saw cuts between them and what is left to trim. */
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const [left, width, top] = [4, 342, 40] as const;

export function RowOnBoard({ values: v }: { values: Values }) {
  const pair = v.wallsFrom === 'bookmatched';
  // Ends behind the sides are shorter: what the row has beyond its sides belongs to them.
  const rows = pair ? 1 : 2;
  const end = v.wallsTogether / rows - v.outsideLength;
  const lengths = Array.from({ length: rows }, () => [end, v.outsideLength]).flat();
  const cuts = lengths.length - 1;
  const lost = cuts > 0 ? (v.boardLength - v.boardSpare - v.wallsTogether) / cuts : 0;
  const used = v.boardLength - v.boardSpare;
  const scale = width / Math.max(v.boardLength, used);
  const high = Math.max(24, v.outsideHeight * scale);
  const fits = v.boardSpare >= 0;
  let x = left + (fits ? (v.boardSpare / 2) * scale : 0);
  const first = x;
  return (
    <Drawing
      view={[0, 0, 350, top + high + 52]}
      title="The walls of one row on the board"
      description={`The board is ${said(v.boardLength, 'length')} long; walls and saw cuts take ${said(used, 'length')}. ${
        fits ? `${said(v.boardSpare, 'length')} is left to trim.` : 'It is too short.'
      }`}
    >
      <Dimension
        from={[left, top - 14]}
        to={[left + v.boardLength * scale, top - 14]}
        value={v.boardLength}
        text={13}
      />
      <rect
        class="part-finger"
        fill="url(#pencil)"
        x={left}
        y={top}
        width={v.boardLength * scale}
        height={high}
      />
      <rect class="hole" x={first} y={top} width={used * scale} height={high} />
      {lengths.map((length, i) => {
        const at = x;
        x += (length + lost) * scale;
        return (
          <g key={i}>
            <rect class="wood" x={at} y={top} width={length * scale} height={high} />
            {length * scale > 40 && (
              <Label class="on-lid" x={at + (length * scale) / 2} y={top + high / 2}>
                {i % 2 === 0 ? (i === 0 ? 'front' : 'back') : 'side'}
              </Label>
            )}
          </g>
        );
      })}
      {!fits && (
        <path
          class="error-bar binds"
          stroke-width={3}
          d={`M${left + v.boardLength * scale} ${top - 6}V${top + high + 6}`}
        />
      )}
      <NumberLabel
        x={left}
        y={top + high + 20}
        anchor="start"
        value={lost}
        kind="length"
        before="each place between two walls takes "
      />
      <NumberLabel
        class={fits ? undefined : 'warning'}
        x={left}
        y={top + high + 38}
        anchor="start"
        value={Math.abs(v.boardSpare)}
        kind="length"
        before={fits ? 'hatched, to trim: ' : 'the board is short by '}
      />
    </Drawing>
  );
}
