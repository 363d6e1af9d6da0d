/** The end grain of a piece, and the shape it dries to: dashed before, solid after, the change drawn larger. */
import type { LogPiece, Point } from '../../calc/board/log-map.ts';
import type { LogShape } from '../../calc/board/log-shape.ts';
import type { LogPoint, RingLog } from '../../calc/board/rings.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { GrainFace } from './GrainFace.tsx';
import type { FacePlacement } from './grain-lines.ts';

export interface DriedPieceProps {
  piece: LogPiece;
  shape: LogShape;
  log: RingLog;
  description: string;
}

const degrees = Math.PI / 180;

/** The end grain of a piece as a face: u along the width, v from its upper edge down. */
export function endGrain({ center, width, thickness, turn }: LogPiece): FacePlacement {
  const [c, s] = [Math.cos(turn * degrees), Math.sin(turn * degrees)];
  const along: LogPoint = [0, c, s];
  const across: LogPoint = [0, s, -c];
  const corner = (i: 1 | 2) => center[i - 1]! - (along[i] * width) / 2 - (across[i] * thickness) / 2;
  return { origin: [0, corner(1), corner(2)], along, across, length: width, width: thickness };
}

/** How many times too large the change is drawn, so that its largest part takes at most an eighth of the width. */
function magnification({ before, after }: LogShape, width: number): number {
  const largest = Math.max(...before.map(([x, y], i) => Math.hypot(after[i]![0] - x, after[i]![1] - y)));
  return [20, 10, 5, 2].find((times) => times * largest <= width / 8) ?? 1;
}

const pathOf = (points: readonly Point[]) =>
  `M${points.map(([x, y]) => `${x.toFixed(2)} ${(-y).toFixed(2)}`).join('L')}Z`;

export function DriedPiece({ piece, shape, log, description }: DriedPieceProps) {
  const { width, thickness } = piece;
  const { before, after } = shape;
  const times = magnification(shape, width);
  const drawn = before.map(([x, y], i): Point => {
    const [toX, toY] = after[i]!;
    return [x + times * (toX - x), y + times * (toY - y)];
  });
  const highest = Math.max(...drawn.map(([, y]) => Math.abs(y)), thickness / 2);
  const sheet = Math.max(width * 1.15, 3 * highest, 60);
  const text = textSize(sheet);
  const top = highest + text * 1.8;
  return (
    <Drawing
      view={[-sheet / 2, -top, sheet, 2 * top + text * 1.6]}
      title="End grain of the board, before and after"
      description={description}
    >
      <GrainFace
        face={endGrain(piece)}
        log={log}
        x={-width / 2}
        y={-thickness / 2}
        class="wood-end hidden-edge"
      />
      <path class="after" d={pathOf(drawn)} />
      <Label x={0} y={(shape.bark === 'upper' ? -1 : 1) * (highest + text * 0.9)}>
        bark side
      </Label>
      <Label x={0} y={(shape.bark === 'upper' ? 1 : -1) * (highest + text * 0.9)}>
        pith side
      </Label>
      <Label x={-sheet / 2 + text * 0.2} y={top + text * 0.8} anchor="start">
        {times > 1
          ? `dashed: before; solid: after, change drawn ${times} times`
          : 'dashed: before; solid: after, true'}
      </Label>
    </Drawing>
  );
}
