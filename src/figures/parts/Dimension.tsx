/** A dimension line with arrowheads and its length, as on a working drawing: between two points, level or upright. */
import { NumberLabel } from './Label.tsx';

export interface DimensionProps {
  /** Ends of the measured length, in the drawing's user units. */
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  /** What is measured, in mm. */
  value: number;
  digits?: 0 | 1 | 2;
  denominator?: 8 | 16 | 32 | 64;
  /** Where the number stands, as seen along the line; beyond the ends for lengths too short to hold it. */
  side?: 'before' | 'after' | 'beyond';
  /** Height of the text in user units: the frame's. */
  text: number;
  before?: string;
}

/** Lines from the object to the dimension line are the caller's: they depend on what they leave. */
export function Dimension({
  from,
  to,
  value,
  digits,
  denominator,
  side = 'before',
  text,
  before,
}: DimensionProps) {
  const [x1, y1] = from;
  const [x2, y2] = to;
  const upright = Math.abs(x2 - x1) < Math.abs(y2 - y1);
  const gap = text * 0.75;
  const sign = side === 'after' ? 1 : -1;
  const middle = [(x1 + x2) / 2, (y1 + y2) / 2] as const;
  const place =
    side === 'beyond'
      ? upright
        ? { x: x2, y: Math.max(y1, y2) + gap, anchor: 'middle' as const }
        : { x: Math.max(x1, x2) + gap / 2, y: y2, anchor: 'start' as const }
      : upright
        ? { x: middle[0] + sign * gap, y: middle[1], turn: -90 }
        : { x: middle[0], y: middle[1] + sign * gap };
  return (
    <g class="dimension">
      <line x1={x1} y1={y1} x2={x2} y2={y2} marker-start="url(#arrow)" marker-end="url(#arrow)" />
      <NumberLabel
        {...place}
        value={value}
        kind="length"
        digits={digits}
        denominator={denominator}
        before={before}
      />
    </g>
  );
}
