/** The first half inch of a rule, twice as large as it is: one user unit is a CSS pixel, 96 to the inch. */
import { INCH, type Ruler } from '../../units/index.ts';

const scale = (2 * 96) / INCH;
const [width, height] = [97, 22];

/** How long the line at a mark is: longer at whole tenths, fifths or the halves, quarters and eighths of an inch. */
function lengthOf(count: number, { mark, system, name }: Ruler): number {
  if (system === 'mm') return (count * mark) % 5 === 0 ? 16 : Number.isInteger(count * mark) ? 11 : 7;
  if (name === '0.01 in') return count % 10 === 0 ? 16 : count % 5 === 0 ? 11 : 7;
  const parts = INCH / mark;
  const level = [2, 4, 8, 16, 32].findIndex((part) => (count * part) % Math.round(parts) === 0);
  return level < 0 ? 5 : [18, 15, 12, 9, 7][level]!;
}

export function RulerPiece({ ruler }: { ruler: Ruler }) {
  const marks = Array.from({ length: Math.floor(width / (ruler.mark * scale)) + 1 }, (_, count) => count);
  return (
    <svg
      class="ruler-piece"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <rect x="0" y="0" width={width} height={height} />
      <path
        d={marks
          .map((count) => `M${(count * ruler.mark * scale + 0.5).toFixed(2)} 0v${lengthOf(count, ruler)}`)
          .join('')}
      />
    </svg>
  );
}
