/** A box from the front and from above, and a column of all its outside: how much of it the wood takes is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Section } from './Section.tsx';

/** Share of the outside that can be marked as lost, %. */
export const lostRange = { low: 0, high: 100 } as const;
const [left, top, foot] = [12, 40, 254] as const;
const column = { x: 240, width: 84 } as const;
export const lostFrame: GuessFrame = {
  width: 350,
  height: 280,
  from: [column.x + column.width / 2, top],
  to: [column.x + column.width / 2, foot],
};
const place = (percent: number) => placeIn(lostFrame, lostRange, percent)[1];

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function PouredInside({ values: v, mark, open }: Props) {
  const scale = 196 / v.outsideLength;
  const above = foot - v.outsideWidth * scale;
  const lost = v.shareNotInside;
  /** The number stands in the middle of what is lost, or lower where the mark's line would cross it. */
  const middle = (top + place(lost)) / 2;
  const number = mark !== undefined && Math.abs(place(mark) - middle) < 14 ? middle + 24 : middle;
  return (
    <Drawing
      view={[0, 0, lostFrame.width, lostFrame.height]}
      title="A box cut through and from above, and a column of its whole outside"
      description={`Its walls are ${said(v.wall, 'length')} thick, its outside ${said(v.outsideLength, 'length')} by ${said(v.outsideWidth, 'length')} by ${said(v.outsideHeight, 'length')}. ${
        open
          ? `${said(lost, 'percent', { digits: 0 })} of the outside is no use to the contents.`
          : 'How much of the outside is no use to the contents is not drawn yet.'
      }`}
    >
      <g transform={`translate(${left} ${top}) scale(${scale})`}>
        <Section values={v} />
      </g>
      <g transform={`translate(${left} ${above}) scale(${scale})`}>
        <rect class="wood" x="0" y="0" width={v.outsideLength} height={v.outsideWidth} />
        <rect class="inside" x={v.wall} y={v.wall} width={v.insideLength} height={v.insideWidth} />
      </g>
      <NumberLabel x={left} y={top - 16} anchor="start" value={v.wall} kind="length" before="walls " />
      <Label x={left} y={foot + 16} anchor="start">
        from the front, from above
      </Label>
      <rect class="inside" x={column.x} y={top} width={column.width} height={foot - top} />
      {open && (
        <g class="arrives">
          <rect class="wood-end" x={column.x} y={top} width={column.width} height={place(lost) - top} />
          <NumberLabel
            class="on-wood"
            x={column.x + column.width / 2}
            y={number}
            value={lost}
            kind="percent"
            digits={0}
          />
        </g>
      )}
      {mark !== undefined && (
        <path class="ghost" d={`M${column.x} ${top}h${column.width}V${place(mark)}h${-column.width}z`} />
      )}
      <Label x={column.x + column.width / 2} y={top - 16}>
        all its outside
      </Label>
      <Label x={column.x + column.width / 2} y={foot + 16}>
        left inside
      </Label>
    </Drawing>
  );
}
