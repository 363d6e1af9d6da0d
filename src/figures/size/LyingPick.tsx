/** Three ways to lay the same dominoes, each with the outline of the box around it, all at one scale. */
import { boxAround, lyings } from '../../box/design/lying.ts';
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** Drawing units for a mm: the widest of them just fits. */
const scale = 0.62;

export function LyingPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const { turned, places } = lyings[option]!;
  const thing = v.items[0]!;
  const box = boxAround(v, option);
  const each = turned.map((axis) => thing[axis] * scale) as [number, number, number];
  const inset = (v.wall + v.clearance) * scale;
  const [w, d, h] = [box.outsideLength * scale, box.outsideWidth * scale, box.outsideHeight * scale];
  const [x, y] = [75 - w / 2, 8];
  const foot = y + d + 12 + 54;
  const lines = (
    left: number,
    top: number,
    [a, b]: readonly [number, number],
    [m, n]: readonly [number, number],
  ) =>
    [
      ...Array.from({ length: m + 1 }, (_, i) => `M${left + i * a} ${top}v${n * b}`),
      ...Array.from({ length: n + 1 }, (_, i) => `M${left} ${top + i * b}h${m * a}`),
    ].join('');
  const bottom = (v.bottomLip + v.bottomTongue) * scale;
  return (
    <Drawing
      view={[0, 0, 150, 152]}
      title="The things from above and from the front"
      description={
        open
          ? `The box around them is ${said(box.outsideLength, 'length')} by ${said(box.outsideWidth, 'length')} by ${said(box.outsideHeight, 'length')} outside.`
          : `${places.join(' by ')} of them.`
      }
    >
      {open && (
        <g class="arrives">
          <rect class="wood" x={x} y={y} width={w} height={d} />
          <rect class="wood" x={x} y={foot - h} width={w} height={h} />
        </g>
      )}
      <path class="thing" d={lines(x + inset, y + inset, [each[0], each[1]], [places[0], places[1]])} />
      <path
        class="thing"
        d={lines(x + inset, foot - bottom - places[2] * each[2], [each[0], each[2]], [places[0], places[2]])}
      />
    </Drawing>
  );
}
