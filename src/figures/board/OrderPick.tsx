/**
 * Three orders of the walls on one strip; open, the box laid flat again, with its lines as they came out. The walls are drawn
 * higher than they are, so that a letter fits on them; lengths and slopes are true.
 */
import type { Values } from '../../box/whole/index.ts';
import { matchesOfOrder } from '../../calc/board/line-round.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

/** Walls counted as one walks round the box: front, right side, back, left side. */
const orders: Readonly<Record<string, readonly number[]>> = {
  lengths: [0, 2, 1, 3],
  walk: [0, 1, 2, 3],
  half: [0, 1, 3, 2],
};
const letters = ['F', 'R', 'B', 'L'] as const;
/** Slope of the line, degrees, more than most wood has, so that it is seen at this size. Ours. */
const slope = 3;

/** Corners that match in an option. */
export const cornersOf = (option: string): number => matchesOfOrder(orders[option]!);
/** The order that matches most. */
export const bestOrder = (): string =>
  Object.keys(orders).reduce((best, one) => (cornersOf(one) > cornersOf(best) ? one : best));

export function OrderPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const order = orders[option]!;
  const lengths = [v.outsideWidth, v.outsideLength, v.outsideWidth, v.outsideLength];
  const whole = lengths.reduce((sum, one) => sum + one, 0) + 3 * v.kerf;
  const [left, top] = [4, 6];
  const scale = 142 / whole;
  const high = 54;
  const rise = Math.tan((slope * Math.PI) / 180);
  /** Where each wall begins on the strip, mm. */
  const starts = new Map<number, number>();
  let reach = 0;
  for (const wall of order) {
    starts.set(wall, reach);
    reach += lengths[wall]! + v.kerf;
  }
  const row = (walls: readonly number[], y: number) => {
    let x = left;
    return walls.map((wall) => {
      const at = x;
      const wide = lengths[wall]! * scale;
      x += wide + v.kerf * scale;
      const low = y + high - 5 - starts.get(wall)! * rise * scale;
      return (
        <g key={wall}>
          <rect class="wood" x={at} y={y} width={wide} height={high} />
          <path class="curve" d={`M${at} ${low}l${wide} ${-wide * rise}`} />
          <Label class="on-lid" x={at + wide / 2} y={y + 14}>
            {letters[wall]}
          </Label>
        </g>
      );
    });
  };
  const folded = top + high + 26;
  return (
    <Drawing
      view={[0, 0, 150, open ? folded + high + 30 : top + high + 8]}
      text={18}
      title="Four walls on one strip"
      description={`On the strip: ${order.map((wall) => ['front', 'right side', 'back', 'left side'][wall]).join(', ')}.${
        open ? ` ${cornersOf(option)} corners match.` : ''
      }`}
    >
      {row(order, top)}
      {open && (
        <>
          <path class="thin" d={`M75 ${top + high + 5}v14`} marker-end="url(#arrow)" />
          {row([0, 1, 2, 3], folded)}
          <Label x={75} y={folded + high + 16}>
            {`${cornersOf(option)} of 4 match`}
          </Label>
        </>
      )}
    </Drawing>
  );
}
