/** A box from above that is to have its ratio inside: how long it must be. */
import { Drawing } from '../parts/Drawing.tsx';
import { placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { frameFrom, height, left, type Props, scale, top } from './from-above.ts';

/** The outside length of a box that is to have the ratio inside. */
export const longRange = { low: 125, high: 200 } as const;
export const longFrame = frameFrom(left, longRange, top + 62 * scale);

export function WantedInside({ values: v, mark, open }: Props) {
  const place = (mm: number) => placeIn(longFrame, longRange, mm)[0];
  const [high, wall] = [v.outsideWidth * scale, v.wall * scale];
  const end = place(open ? v.lengthForInside : v.outsideLength);
  return (
    <Drawing
      view={[0, 0, longFrame.width, height]}
      title="A box from above"
      description={`It is ${said(v.outsideLength, 'length')} × ${said(v.outsideWidth, 'length')}, three to two outside. ${
        open
          ? `For three to two inside it must be ${said(v.lengthForInside, 'length')} long.`
          : 'How long it must be for three to two inside is not drawn yet.'
      }`}
    >
      <rect class={open ? 'wood arrives' : 'wood'} x={left} y={top} width={end - left} height={high} />
      <rect
        class="inside"
        x={left + wall}
        y={top + wall}
        width={end - left - 2 * wall}
        height={high - 2 * wall}
      />
      {open && <path class="hidden-line" d={`M${place(v.outsideLength)} ${top}V${top + high}`} />}
      {mark !== undefined && <path class="ghost bare" d={`M${place(mark)} ${top - 6}V${top + high + 6}`} />}
      <Label x={(left + end) / 2} y={top + high / 2}>
        {open ? '3 to 2 inside' : 'make this 3 to 2'}
      </Label>
      <NumberLabel
        x={left}
        y={top - 14}
        anchor="start"
        value={open ? v.lengthForInside : v.outsideLength}
        kind="length"
        before={open ? '' : 'now '}
        after=" long"
      />
    </Drawing>
  );
}
