/** One corner of fingers opened flat, with the holes of a through groove where an option says they show. */
import type { Values } from '../../box/whole/index.ts';
import { cornerHoles, type Pair } from '../../calc/grooves/groove-corner.ts';
import { Drawing } from '../parts/Drawing.tsx';

/** In which faces holes show, of the walls with a finger at the lower edge (first) and of those with a socket. */
const holeOptions: Readonly<Record<string, readonly Pair[]>> = {
  none: [],
  finger: ['first'],
  socket: ['second'],
  both: ['first', 'second'],
};

/** The option that is true: a finger carries its groove into the face of the neighbor. */
export function trueHoles(v: Values): string {
  const carried = new Set(cornerHoles(v.bottomLip, v.bottomTongue, v.fingerWidth).map(({ pair }) => pair));
  return carried.size > 1 ? 'both' : carried.has('first') ? 'socket' : 'finger';
}

const size = { width: 150, height: 132, corner: 75, half: 68, foot: 126 } as const;

export function CornerPick({ values: v, option }: { values: Values; option: string }) {
  const { corner, half, foot } = size;
  const shown = 4 * v.fingerWidth;
  const scale = (foot - 6) / shown;
  const up = (height: number) => foot - height * scale;
  const into = (face: Pair, from: number) => corner + (face === 'first' ? -1 : 1) * from * scale;
  const ends = Array.from({ length: 4 }, (_, n) => {
    const face: Pair = n % 2 === 0 ? 'second' : 'first';
    return `M${corner} ${up(n * v.fingerWidth)}H${into(face, v.wall)}V${up((n + 1) * v.fingerWidth)}H${corner}z`;
  }).join('');
  const holes = holeOptions[option] ?? [];
  return (
    <Drawing
      view={[0, 0, size.width, size.height]}
      title="A corner opened flat"
      description={
        holes.length === 0
          ? 'No hole shows.'
          : `Holes show in ${holes.length === 2 ? 'both faces' : `the ${holes[0] === 'first' ? 'left' : 'right'} face`}.`
      }
    >
      <rect class="wood" x={corner - half} y={up(shown)} width={2 * half} height={foot - up(shown)} />
      <path class="end" d={ends} />
      <line class="axis" x1={corner} y1={up(shown)} x2={corner} y2={foot} />
      {holes.map((face) => {
        const [a, b] = [into(face, v.wall - v.grooveDepth), into(face, v.wall)];
        return (
          <rect
            key={face}
            class="hole"
            x={Math.min(a, b)}
            y={up(v.bottomLip + v.bottomTongue)}
            width={Math.abs(b - a)}
            height={v.bottomTongue * scale}
          />
        );
      })}
    </Drawing>
  );
}
