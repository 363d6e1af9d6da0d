/** A small box of thick stock from above: its right wall is drawn when it is built. */
import { Drawing } from '../parts/Drawing.tsx';
import { placeIn } from '../parts/guess-frame.ts';
import { NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { frameFrom, height, left, type Props, scale, top } from './from-above.ts';

/** The inside length of a small box in thick stock. */
export const fitsRange = { low: 60, high: 160 } as const;
const thick = 19;
export const fitsFrame = frameFrom(left + thick * scale, fitsRange, top + 51 * scale);

export function InsideOfIt({ values: v, mark, open }: Props) {
  const place = (mm: number) => placeIn(fitsFrame, fitsRange, mm)[0];
  const [outside, inner] = [left + v.outsideLength * scale, place(0)];
  const [high, wall] = [v.outsideWidth * scale, v.wall * scale];
  return (
    <Drawing
      view={[0, 0, fitsFrame.width, height - 40]}
      title="A box from above"
      description={`Outside ${said(v.outsideLength, 'length')} × ${said(v.outsideWidth, 'length')}, walls ${said(v.wall, 'length')}. ${
        open
          ? `Inside ${said(v.insideLength, 'length')} × ${said(v.insideWidth, 'length')}.`
          : 'How long it is inside is not drawn yet.'
      }`}
    >
      <rect class="wood" x={left} y={top} width={outside - left} height={high} />
      <rect class="inside" x={inner} y={top + wall} width={outside - inner} height={high - 2 * wall} />
      {open && (
        <g class="arrives">
          <rect
            class="wood"
            x={place(v.insideLength)}
            y={top}
            width={outside - place(v.insideLength)}
            height={high}
          />
          <NumberLabel
            x={(inner + place(v.insideLength)) / 2}
            y={top + high / 2}
            value={v.insideLength}
            kind="length"
            before="inside "
          />
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${place(mark)} ${top - 6}V${top + high + 6}`} />}
      <NumberLabel
        x={(left + outside) / 2}
        y={top - 14}
        value={v.outsideLength}
        kind="length"
        before="outside "
      />
      <NumberLabel
        class="on-lines"
        x={left + 4}
        y={top + high + 16}
        anchor="start"
        value={v.wall}
        kind="length"
        before="walls "
      />
    </Drawing>
  );
}
