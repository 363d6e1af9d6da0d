/** The face of a board, and the ends of three boards of which one belongs to it. */
import type { LogPiece } from '../../calc/board/log-map.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { unfolded } from './BoardFace.tsx';
import { figureLog } from './figure-log.ts';
import { GrainFace } from './GrainFace.tsx';

const size = { width: 96, thickness: 22 } as const;
/** Boards whose rings lie along the face, at a slant, and square to it. */
const boards: Readonly<Record<string, LogPiece>> = {
  flat: { ...size, center: [12, 72], turn: 0 },
  slant: { ...size, center: [62, 62], turn: 0 },
  upright: { ...size, center: [92, 0], turn: 0 },
};
/** The board whose face is shown. */
export const facedBoard = 'flat';

/** How much of the face is drawn, mm. */
const shown = 330;

export function ArchedFace() {
  const { face } = unfolded(boards[facedBoard]!, shown);
  return (
    <Drawing
      view={[-10, -8, 350, face.width + 34]}
      title="The face of a board"
      description="Arches run along the middle of the face, straight lines beside them."
    >
      <GrainFace face={face} log={figureLog} />
      <Label x={shown / 2} y={face.width + 14}>
        the face of one board
      </Label>
    </Drawing>
  );
}

export function EndPick({ option }: { option: string }) {
  const { end } = unfolded(boards[option]!, shown);
  return (
    <Drawing
      view={[-4, -4, size.width + 8, size.thickness + 8]}
      title="The end of a board"
      description={
        option === 'flat'
          ? 'Its rings lie along the wide face.'
          : option === 'slant'
            ? 'Its rings cross the wide face at a slant.'
            : 'Its rings stand square to the wide face.'
      }
    >
      {/* Unfolded it stands upright; here it lies on its pith side. */}
      <g transform={`translate(0 ${size.thickness}) rotate(-90)`}>
        <GrainFace face={end} log={figureLog} class="wood-end" />
      </g>
    </Drawing>
  );
}
