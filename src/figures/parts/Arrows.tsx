/** A dimension line without its number, level or upright. */
interface Props {
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
}

export function Arrows({ from: [x1, y1], to: [x2, y2] }: Props) {
  return (
    <g class="dimension">
      <line x1={x1} y1={y1} x2={x2} y2={y2} marker-start="url(#arrow)" marker-end="url(#arrow)" />
    </g>
  );
}
