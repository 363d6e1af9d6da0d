/** What goes into a box with dividers, before it does: the things pushed together, dividers and lining laid below. */
import type { Values } from '../../box/whole/index.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';

/** Where the drawing of the inside begins, and how large a mm is in it; mm for the wall, else drawing units. */
export const sheet = { wall: 9, left: 10, top: 30, scale: 2.3, deep: 92 } as const;
/** Where the inside begins. */
export const origin = sheet.left + sheet.wall * sheet.scale;
/** How much of the far walls is drawn while the end is missing, mm. */
const begun = 60;

export function CompartmentsApart({ values: v }: { values: Values }) {
  const { wall, left, top, scale, deep } = sheet;
  const x = (mm: number) => origin + mm * scale;
  const y = top + wall * scale;
  const below = y + deep + wall * scale;
  const count = v.dividersAcross + 1;
  const thing = v.contentsLength / count;
  const [lining, divider] = [v.lining * scale, v.dividerThickness * scale];
  const things = Array.from({ length: count }, (_, index) => index * thing);
  const dividers = Array.from({ length: v.dividersAcross }, (_, index) => 20 + index * 16);
  return (
    <>
      <path
        class="wood"
        d={`M${x(begun)} ${top}H${left}V${below}H${x(begun)}v${-wall * scale}H${origin}V${y}H${x(begun)}z`}
      />
      {things.map((start) => (
        <rect key={start} class="thing" x={x(start)} y={y + 8} width={thing * scale} height={deep - 16} />
      ))}
      {dividers.map((from) => (
        <rect key={from} class="wood-end" x={from} y={below + 12} width={divider} height="30" />
      ))}
      <Label x={24 + v.dividersAcross * 16} y={below + 27} anchor="start">
        dividers
      </Label>
      <path
        class="lining"
        d={`M180 ${below + 12}h${lining}v30h${-lining}zM196 ${below + 12}h${lining}v30h${-lining}z`}
      />
      <Label x={210} y={below + 27} anchor="start">
        lining
      </Label>
      <NumberLabel
        x={(origin + x(v.contentsLength)) / 2}
        y={top - 14}
        value={v.contentsLength}
        kind="length"
        before="pushed together "
      />
    </>
  );
}
