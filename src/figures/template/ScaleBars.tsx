/** Two bars to check the printer's scale: 100 mm, and 4 in (101.6 mm). */
import { INCH } from '../../units/index.ts';

/** A bar with a tick at every tenth or quarter. */
function Bar({ y, length, parts, label }: { y: number; length: number; parts: number; label: string }) {
  return (
    <g>
      <rect class="bar" x={2} y={y} width={length} height={1.5} data-bar={label} />
      {Array.from({ length: parts + 1 }, (_, index) => (
        <line
          key={index}
          class="outline"
          x1={2 + (index * length) / parts}
          x2={2 + (index * length) / parts}
          y1={y}
          y2={y + 4}
        />
      ))}
      <text x={length + 5} y={y + 3}>
        {label}
      </text>
    </g>
  );
}

export function ScaleBars() {
  return (
    <svg
      class="template scale-bars"
      role="img"
      aria-label="A bar of 100 mm and a bar of 4 in"
      width="125mm"
      height="16mm"
      viewBox="0 0 125 16"
    >
      <Bar y={1} length={100} parts={10} label="100 mm" />
      <Bar y={9} length={4 * INCH} parts={4} label="4 in" />
    </svg>
  );
}
