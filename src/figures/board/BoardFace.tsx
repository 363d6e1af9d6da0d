/** A board unfolded: its end grain, and beside it the face towards the bark, so that each ring runs from one to the other. */
import type { LogPiece } from '../../calc/board/log-map.ts';
import type { LogPoint, RingLog } from '../../calc/board/rings.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { GrainFace } from './GrainFace.tsx';
import type { FacePlacement } from './grain-lines.ts';

/** How much of the board's length is drawn, mm. */
const shown = 360;
/** Between end and face, mm. */
const gap = 4;

/** End and face of a board as they unfold: both with v along the width, their common edge between them. */
export function unfolded(piece: LogPiece, length: number): { end: FacePlacement; face: FacePlacement } {
  const { center, width, thickness } = piece;
  const turn = (piece.turn * Math.PI) / 180;
  // Up out of the wide face; if that looks to the pith, the board is turned over.
  const side = -center[0] * Math.sin(turn) + center[1] * Math.cos(turn) < 0 ? -1 : 1;
  const up: LogPoint = [0, -side * Math.sin(turn), side * Math.cos(turn)];
  const across: LogPoint = [0, side * Math.cos(turn), side * Math.sin(turn)];
  const corner = (height: number): LogPoint => [
    0,
    center[0] + (up[1] * height * thickness) / 2 - (across[1] * width) / 2,
    center[1] + (up[2] * height * thickness) / 2 - (across[2] * width) / 2,
  ];
  return {
    end: { origin: corner(-1), along: up, across, length: thickness, width },
    face: { origin: corner(1), along: [1, 0, 0], across, length, width },
  };
}

export interface BoardFaceProps {
  piece: LogPiece;
  log: RingLog;
  description: string;
}

export function BoardFace({ piece, log, description }: BoardFaceProps) {
  const { end, face } = unfolded(piece, shown);
  const left = end.length + gap;
  const sheet = left + shown + 2;
  const text = textSize(sheet);
  return (
    <Drawing
      view={[-left - 1, -text * 1.6, sheet, face.width + text * 3.2]}
      title="The board unfolded: end and face"
      description={description}
    >
      <GrainFace face={end} log={log} x={-left} class="wood-end" />
      <GrainFace face={face} log={log} />
      <Label x={-left} y={-text * 0.8} anchor="start">
        end
      </Label>
      <Label x={shown} y={-text * 0.8} anchor="end">
        face toward the bark
      </Label>
      <NumberLabel
        x={shown}
        y={face.width + text * 0.8}
        anchor="end"
        value={shown}
        kind="length"
        digits={0}
        denominator={8}
        after=" of its length"
      />
    </Drawing>
  );
}
