/** The height of the hole above a lowered front, with a line that points at it. In the drawing's own user units. */
import { NumberLabel } from '../parts/Label.tsx';

interface Props {
  value: number;
  /** Where the words begin. */
  at: readonly [x: number, y: number];
  /** The middle of the hole. */
  hole: readonly [x: number, y: number];
  /** From the words to the start of the line. */
  from: readonly [x: number, y: number];
}

export function HoleLabel({ value, at: [x, y], hole, from }: Props) {
  const start = `${(x + from[0]).toFixed(1)} ${(y + from[1]).toFixed(1)}`;
  return (
    <g class="hole-label">
      <path
        class="thin"
        d={`M${start}L${hole.map((place) => place.toFixed(1)).join(' ')}`}
        marker-end="url(#arrow)"
      />
      <NumberLabel x={x} y={y} anchor="start" value={value} kind="length" before="hole " />
    </g>
  );
}
