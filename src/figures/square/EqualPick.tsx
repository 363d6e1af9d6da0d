/**
 * Three boxes from above, put together loosely; open, each as it lies when clamps have made its diagonals equal. What
 * differs between the walls is drawn many times as large.
 */
import type { Values } from '../../box/whole/index.ts';
import { leanOfUnequalWalls } from '../../calc/square/ends.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** How much longer the far long wall and the near one are, in differences of the walls. */
const longer: Readonly<Record<string, readonly [far: number, near: number]>> = {
  leaning: [0, 0],
  one: [1, 0],
  both: [1, 1],
};

/** Lean of the end walls once the diagonals are equal, degrees. */
export function leanOf(v: Values, option: string): number {
  const [far, near] = longer[option]!;
  return leanOfUnequalWalls.compute({ d: Math.abs(far - near) * v.wallsApart, b: v.insideWidth });
}

/** The option that leans still. */
export const stillLeans = (v: Values): string =>
  Object.keys(longer).find((option) => leanOf(v, option) > 0) ?? 'leaning';

/** What the drawing does with a difference, and how far a loose box leans, drawing units. */
const [times, loose] = [16, 16] as const;
const [left, top, long] = [26, 14, 88] as const;

export function EqualPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const [far, near] = longer[option]!;
  const scale = long / v.insideLength;
  const more = v.wallsApart * times * scale;
  const high = v.insideWidth * scale;
  // Loose, the far wall has slid to the right; clamped, what it is longer stands out by half at each end.
  const slid = open ? ((near - far) * more) / 2 : loose - 8;
  const [a, b] = [left + slid, left + slid + long + far * more];
  const [c, d] = [left + long + near * more, left];
  const foot = top + high;
  const lean = leanOf(v, option);
  return (
    <Drawing
      view={[0, 0, 150, foot + 14]}
      title="A box from above, with its diagonals"
      description={
        open
          ? lean > 0
            ? `Its diagonals are equal, and its ends lean by ${said(lean, 'angle', { digits: 2 })} each. The difference of its walls is drawn ${times} times.`
            : 'Its diagonals are equal, and it is square.'
          : 'Put together loosely.'
      }
    >
      <path class="wood" d={`M${a} ${top}H${b}L${c} ${foot}H${d}Z`} />
      <path class="curve" d={`M${a} ${top}L${c} ${foot}M${b} ${top}L${d} ${foot}`} />
      {open && lean > 0 && (
        <path class="hidden-line" d={`M${d} ${top - 8}V${foot}M${c} ${top - 8}V${foot}`} />
      )}
    </Drawing>
  );
}
