/** The four corners of a box seen from outside, with the lines of the figure as they meet there; one line is drawn dark. */
import { stepsRound, type WallLine } from '../../calc/board/line-round.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** mm of each wall that is shown beside its corner, and between two lines. */
const [shown, apart] = [48, 8] as const;
/** How a face that recedes is drawn: across and up, per mm. */
const [across, up] = [0.87, 0.32] as const;
const names = ['front', 'right side', 'back', 'left side'] as const;
/** A step under this is not seen, mm: about a pencil line. Ours. */
const seen = 0.5;

/** Ends of the line h = at + rise · u within a wall of this height, u from 0 to `shown`; nothing where it is off the wall. */
function within(at: number, rise: number, high: number): readonly [number, number] | undefined {
  if (Math.abs(rise) < 1e-9) return at >= 0 && at <= high ? [0, shown] : undefined;
  const [one, other] = [-at / rise, (high - at) / rise];
  const [from, to] = [Math.max(0, Math.min(one, other)), Math.min(shown, Math.max(one, other))];
  return from < to ? [from, to] : undefined;
}

interface Props {
  walls: readonly WallLine[];
  /** Height of the walls, mm. */
  high: number;
}

export function CornerLines({ walls, high }: Props) {
  const steps = stepsRound(walls).map(Math.abs);
  const scale = Math.min(1.7, 110 / high);
  const side = shown * scale;
  const [wide, tall] = [175, high * scale + 2 * side * up + 50];
  return (
    <Drawing
      view={[0, 0, 350, 2 * tall]}
      title="The four corners from outside, and a line of the figure at each"
      description={steps
        .map(
          (step, i) => `${names[i]} and ${names[(i + 1) % 4]}: ${said(step, 'length', { as: 'fine' })} apart`,
        )
        .join('; ')}
    >
      {walls.map((wall, i) => {
        const next = walls[(i + 1) % 4]!;
        const [x, top] = [wide / 2 + (i % 2) * wide, Math.floor(i / 2) * tall + 6 + 2 * side * up];
        const foot = top + high * scale;
        /** Screen place of a point u mm from the corner, on the wall before it or after it, h mm up. */
        const at = (way: 1 | -1, u: number, h: number) =>
          `${(x + way * u * scale * across).toFixed(1)} ${(foot - h * scale - u * scale * up).toFixed(1)}`;
        const rises = {
          before: (wall.start - wall.end) / wall.length,
          after: (next.end - next.start) / next.length,
        };
        const line = (way: 1 | -1, h: number) => {
          const rise = way < 0 ? rises.before : rises.after;
          const ends = within(h, rise, high);
          return ends ? `M${ends.map((u) => at(way, u, h + rise * u)).join('L')}` : '';
        };
        const face = (way: 1 | -1) =>
          `M${at(way, 0, 0)}L${at(way, shown, 0)}L${at(way, shown, high)}L${at(way, 0, high)}z`;
        const many = Array.from(
          { length: 2 * Math.ceil(high / apart) + 3 },
          (_, n) => n - Math.ceil(high / apart) - 1,
        );
        const faint = (way: 1 | -1, h: number) =>
          many
            .filter((n) => n !== 0)
            .map((n) => line(way, h + n * apart))
            .join('');
        const ends = [wall.end, next.start].map((h) => Math.min(high, Math.max(0, h))) as [number, number];
        return (
          <g key={names[i]}>
            {/* The top of the box: without it the corner could be taken for one seen from inside. */}
            <path
              class="inside"
              d={`M${at(1, 0, high)}L${at(1, shown, high)}L${x} ${top - 2 * side * up}L${at(-1, shown, high)}z`}
            />
            <path class="wood" d={face(-1)} />
            <path class="wood-end" d={face(1)} />
            <path class="ring" d={faint(-1, wall.end) + faint(1, next.start)} />
            <path class="curve" d={line(-1, wall.end) + line(1, next.start)} />
            {steps[i]! > seen && (
              <path
                class="error-bar binds"
                stroke-width={4}
                d={`M${at(1, 0, ends[0])}L${at(1, 0, ends[1])}`}
              />
            )}
            <Label x={x} y={foot + 13}>
              {`${names[i]}, ${names[(i + 1) % 4]}`}
            </Label>
            <NumberLabel
              x={x}
              y={foot + 29}
              value={steps[i]!}
              kind="length"
              as="fine"
              before={steps[i]! > seen ? 'apart by ' : 'meets within '}
            />
          </g>
        );
      })}
    </Drawing>
  );
}
