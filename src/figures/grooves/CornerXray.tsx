/**
 * A corner of fingers opened flat and seen from outside: each face shows its own fingers and, hatched, the ends of its
 * neighbor's. The bottom's groove is dashed; where a finger carries it through, its hole shows in the neighbor's face.
 */
import type { Values } from '../../box/whole/index.ts';
import { cornerHoles, type Pair } from '../../calc/grooves/groove-corner.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';

const width = 350;
const corner = width / 2;
const half = 165;
const head = 24;

export function CornerXray({ values: v }: { values: Values }) {
  const { bottomLip, bottomTongue, fingerWidth: finger, wall, grooveDepth } = v;
  const shown = Math.min(
    Math.max(v.outsideHeight, 1),
    Math.max(4 * finger, bottomLip + bottomTongue + finger),
  );
  const scale = Math.min(10, 250 / shown, (half * 0.5) / wall);
  const foot = head + shown * scale;
  const up = (height: number) => foot - height * scale;
  /** Into the left face (the first pair) or the right one, so many mm from the corner. */
  const into = (face: Pair, from: number) => corner + (face === 'first' ? -1 : 1) * from * scale;
  const other = (pair: Pair): Pair => (pair === 'first' ? 'second' : 'first');

  const holes = cornerHoles(bottomLip, bottomTongue, finger);
  const pairs = [...new Set(holes.map(({ pair }) => pair))];
  const ends = Array.from({ length: Math.ceil(shown / finger) }, (_, n) => {
    const face: Pair = n % 2 === 0 ? 'second' : 'first';
    const [low, high] = [up(n * finger), up(Math.min(shown, (n + 1) * finger))];
    return `M${corner} ${low} H${into(face, wall)} V${high} H${corner} Z`;
  }).join('');
  /** A side of the groove: as far as the corner in the wall whose finger it lies in, as far as its socket in the neighbor. */
  const grooveSide = (pair: Pair, height: number) =>
    `M${into(pair, half / scale)} ${up(height)} H${corner}M${into(other(pair), half / scale)} ${up(height)} H${into(other(pair), wall)}`;
  const grooveLines =
    grooveSide(holes[0]!.pair, bottomLip) + grooveSide(holes.at(-1)!.pair, bottomLip + bottomTongue);
  return (
    <Drawing
      view={[0, 0, width, foot + 26]}
      title="A corner opened flat, from outside"
      description={
        pairs.length > 1
          ? 'The groove crosses from one finger into the next: holes show on both pairs of walls.'
          : `The groove lies inside one finger: one hole shows, in the walls with a ${pairs[0] === 'first' ? 'finger' : 'socket'} at the lower edge.`
      }
    >
      <rect class="wood" x={corner - half} y={head} width={2 * half} height={foot - head} />
      <path class="end" d={ends} />
      <line class="axis" x1={corner} y1={head} x2={corner} y2={foot} />
      <path class="hidden-line" d={grooveLines} />
      {holes.map(({ pair, from, to }, index) => {
        const face = other(pair);
        const [a, b] = [into(face, Math.max(0, wall - grooveDepth)), into(face, wall)];
        return (
          <g key={from}>
            <rect
              class="hole"
              x={Math.min(a, b)}
              y={up(to)}
              width={Math.abs(b - a)}
              height={(to - from) * scale}
            />
            {index < 2 && (
              <Label
                x={b + (face === 'first' ? -6 : 6)}
                y={up(bottomLip + bottomTongue) - 10}
                anchor={face === 'first' ? 'end' : 'start'}
              >
                hole
              </Label>
            )}
          </g>
        );
      })}
      {(v.grooveStop > 0 ? pairs : []).map((pair) => (
        <g key={pair}>
          <path
            class="thin"
            d={`M${into(pair, v.grooveStop)} ${up(bottomLip + bottomTongue)} V${foot + 16} M${corner} ${foot} V${foot + 16}`}
          />
          <g class="dimension">
            <line
              x1={corner}
              y1={foot + 12}
              x2={into(pair, v.grooveStop)}
              y2={foot + 12}
              marker-start="url(#arrow)"
              marker-end="url(#arrow)"
            />
            <NumberLabel
              x={into(pair, v.grooveStop + 5 / scale)}
              y={foot + 12}
              anchor={pair === 'first' ? 'end' : 'start'}
              value={v.grooveStop}
              kind="length"
              before="stop "
            />
          </g>
        </g>
      ))}
      <g class="dimension">
        <line
          x1={corner - half + 10}
          y1={foot}
          x2={corner - half + 10}
          y2={up(bottomLip)}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
        <NumberLabel
          x={corner - half + 16}
          y={bottomLip * scale > 20 ? up(bottomLip / 2) : up(bottomLip + bottomTongue) - 10}
          anchor="start"
          value={bottomLip}
          kind="length"
          before="lip "
        />
      </g>
      <Label x={corner - half / 2} y={head - 11}>
        finger at the edge
      </Label>
      <Label x={corner + half / 2} y={head - 11}>
        socket at the edge
      </Label>
    </Drawing>
  );
}
