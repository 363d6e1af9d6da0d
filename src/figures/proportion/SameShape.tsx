/** A box three to two outside, from above, and where a rectangle of that shape would end inside. */
import type { Values } from '../../box/whole/index.ts';
import { lengthFromRatio } from '../../calc/proportion/proportion.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { frameFrom, height, left, type Props, scale, top } from './from-above.ts';

/** The length of a rectangle of the outside's ratio, as wide as the inside. */
export const shapeRange = { low: 100, high: 175 } as const;
const wallOf = 12;
export const shapeFrame = frameFrom(left + wallOf * scale, shapeRange, top + 62 * scale);

/** How long a rectangle of the outside's ratio and the inside's width is, mm. */
export const sameShape = (v: Values): number =>
  lengthFromRatio.compute({ r: v.outsideRatio, W: v.insideWidth });

export function SameShape({ values: v, mark, open }: Props) {
  const place = (mm: number) => placeIn(shapeFrame, shapeRange, mm)[0];
  const inner = place(0);
  const outer = inner - v.wall * scale;
  const [wide, high, wall] = [v.outsideLength * scale, v.outsideWidth * scale, v.wall * scale];
  const end = place(v.insideLength);
  return (
    <Drawing
      view={[0, 0, shapeFrame.width, height]}
      title="A box from above, three to two outside"
      description={`Outside ${said(v.outsideLength, 'length')} × ${said(v.outsideWidth, 'length')}, inside ${said(v.insideLength, 'length')} × ${said(v.insideWidth, 'length')}. ${
        open
          ? `A rectangle of the outside’s shape would end at ${said(sameShape(v), 'length')} of it.`
          : 'Where a rectangle of the outside’s shape would end is not drawn yet.'
      }`}
    >
      <rect class="wood" x={outer} y={top} width={wide} height={high} />
      <rect class="inside" x={inner} y={top + wall} width={end - inner} height={high - 2 * wall} />
      {open && (
        <g class="arrives">
          <rect
            class="surplus"
            x={place(sameShape(v))}
            y={top + wall}
            width={end - place(sameShape(v))}
            height={high - 2 * wall}
          />
          <path class="truth" d={`M${place(sameShape(v))} ${top + wall}V${top + high - wall}`} />
        </g>
      )}
      {mark !== undefined && (
        <path class="ghost" d={`M${inner} ${top + wall}H${place(mark)}V${top + high - wall}H${inner}z`} />
      )}
      <Label x={outer} y={top - 14} anchor="start">
        outside 3 to 2
      </Label>
      <NumberLabel x={outer + wide} y={top - 14} anchor="end" value={v.outsideLength} kind="length" />
      <NumberLabel
        x={outer + wide}
        y={top + high + 16}
        anchor="end"
        value={v.wall}
        kind="length"
        before="walls "
      />
    </Drawing>
  );
}
