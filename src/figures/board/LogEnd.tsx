/** The end of a log with a board marked on it, in true proportion. The pith stands at (0, 0); up is up. */
import type { LogPiece } from '../../calc/board/log-map.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

/** The made-up log of these figures, mm. */
export const logRadius = 160;
/** Half the side of the square sheet the log is drawn on, mm: room for the bark and a little air. */
export const logSheet = 168;

/** Every ring as two half circles, in one path that never changes. */
export const ringsOf = (ringWidth: number) =>
  Array.from({ length: Math.ceil(logRadius / ringWidth) - 1 }, (_, i) => {
    const r = (i + 1) * ringWidth;
    return `M${r} 0A${r} ${r} 0 1 0 ${-r} 0A${r} ${r} 0 1 0 ${r} 0`;
  }).join('');

export interface LogEndProps {
  piece: LogPiece;
  ringWidth: number;
  /** Whether there can be such a board. */
  possible: boolean;
  description: string;
}

export function LogEnd({ piece, ringWidth, possible, description }: LogEndProps) {
  const { center, width, thickness, turn } = piece;
  return (
    <Drawing
      view={[-logSheet, -logSheet, 2 * logSheet, 2 * logSheet]}
      title="The end of a log"
      description={description}
      class="log-end"
    >
      <circle class="bark" r={logRadius} />
      <path class="ring faint" d={ringsOf(ringWidth)} />
      <circle class="mark" r="2.5" />
      <g transform={`translate(${center[0]} ${-center[1]}) rotate(${-turn})`}>
        <rect
          class={possible ? 'board' : 'board refused'}
          x={-width / 2}
          y={-thickness / 2}
          width={width}
          height={thickness}
        />
      </g>
      <Label x={-logSheet + 2} y={logSheet - 6} anchor="start" class="on-lines">
        dot: pith
      </Label>
    </Drawing>
  );
}
