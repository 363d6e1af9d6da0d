/** A board with its computed figure, the strip for the walls on it, and the walls as they stand side by side on the box. */
import type { Values } from '../../box/whole/index.ts';
import type { LogPoint } from '../../calc/board/rings.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { unfolded } from './BoardFace.tsx';
import { figureLog } from './figure-log.ts';
import { GrainFace } from './GrainFace.tsx';

/** A flat-sawn board: arches in the middle, straight lines toward its edges. Its place in the made-up log is ours. */
const place = { center: [0, 78] as const, turn: 0 };
const names = ['front', 'side', 'back', 'side'] as const;

interface Props {
  values: Values;
  /** From the edge of the board to the strip, mm. */
  from: number;
}

export function StripFromBoard({ values: v, from }: Props) {
  const lengths = [v.outsideWidth, v.outsideLength, v.outsideWidth, v.outsideLength];
  const whole = lengths.reduce((sum, one) => sum + one, 0) + 3 * v.kerf;
  const width = Math.max(v.boardWidth, v.outsideHeight);
  const low = Math.min(from, width - v.outsideHeight);
  const { face } = unfolded({ ...place, width, thickness: v.boardThickness }, whole);
  const scale = 342 / whole;
  const at = (u: number, across: number): LogPoint =>
    [0, 1, 2].map(
      (i) => face.origin[i]! + u * face.along[i]! + across * face.across[i]!,
    ) as unknown as LogPoint;
  const [top, board] = [26, width * scale];
  const walls = top + board + 40;
  let u = 0;
  return (
    <Drawing
      view={[0, 0, 350, walls + v.outsideHeight * scale * 1.0 + 28]}
      title="A strip on a board, and the walls from it"
      description={`The strip lies ${said(low, 'length')} from the edge of a flat-sawn board ${said(width, 'length')} wide.`}
    >
      <Label x={4} y={12} anchor="start">
        the board, and the strip on it
      </Label>
      <g transform={`translate(4 ${top}) scale(${scale.toFixed(4)})`}>
        <GrainFace face={face} log={figureLog} />
        <rect class="lens" x={0} y={low} width={whole} height={v.outsideHeight} />
      </g>
      <Label x={4} y={walls - 14} anchor="start">
        the walls, laid flat
      </Label>
      {lengths.map((length, i) => {
        const x = u;
        u += length + v.kerf;
        return (
          <g key={i}>
            <g transform={`translate(${(4 + x * scale).toFixed(2)} ${walls}) scale(${scale.toFixed(4)})`}>
              <GrainFace
                face={{ ...face, origin: at(x, low), length, width: v.outsideHeight }}
                log={figureLog}
                class={i % 2 === 0 ? 'wood-end' : 'wood'}
              />
            </g>
            {length * scale > 34 && (
              <Label x={4 + (x + length / 2) * scale} y={walls + v.outsideHeight * scale + 14}>
                {names[i]}
              </Label>
            )}
          </g>
        );
      })}
    </Drawing>
  );
}
