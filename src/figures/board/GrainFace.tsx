/** A flat face of wood with its growth-ring figure, in true proportion: u to the right, v down, from the place given. */
import { useMemo } from 'preact/hooks';
import type { RingLog } from '../../calc/board/rings.ts';
import { type FacePlacement, grainPath } from './grain-lines.ts';

export interface GrainFaceProps {
  /** Where the face lies in the log, and its size, mm. */
  face: FacePlacement;
  log: RingLog;
  /** Where its corner (u = 0, v = 0) stands in the drawing. */
  x?: number;
  y?: number;
  /** Class of the rectangle under the lines. */
  class?: string;
}

export function GrainFace({ face, log, x = 0, y = 0, ...rest }: GrainFaceProps) {
  const { origin, along, across, length, width } = face;
  const path = useMemo(() => grainPath(face, log), [...origin, ...along, ...across, length, width, log]);
  return (
    <g transform={x || y ? `translate(${x} ${y})` : undefined}>
      <rect class={rest.class ?? 'wood'} width={length} height={width} />
      <path class="ring" d={path} />
    </g>
  );
}
