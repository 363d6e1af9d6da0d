/**
 * Growth rings of a log, as numbers: which ring runs through a point, and how rings meet a piece.
 *
 *   i = (r + taper·x)/ringWidth,   r = |(y, z) − wander(x, r)|
 *   wander(x, r) = waviness · Σ_k a_k [sin(2πx/λ_k + p_k + r/60) − sin(p_k + r/60)]
 *
 * Symbols: x along the log from the end that is seen (mm), y and z across it from the pith (mm), r distance from
 * the pith (mm), i rings counted from the pith at x = 0, whole numbers on a ring; taper is how much a ring comes
 * nearer to the pith per mm of log. Waves λ and phases p follow from a seed. All of it is made up: no tree was
 * measured. At x = 0 the wander is 0 and the rings are circles, as the dried shape in `log-map.ts` takes them.
 */
import { type LogPiece, type Point, radians, toLog } from './log-map.ts';

/** mm: along the log from the end that is seen, then two directions across it from the pith. */
export type LogPoint = readonly [x: number, y: number, z: number];

/** One made-up log. */
export interface RingLog {
  /** Thickness of one year's wood, mm, above 0. */
  readonly ringWidth: number;
  /** mm that every ring comes nearer to the pith per mm along the log; 0.002 to 0.02 looks like a log. */
  readonly taper: number;
  /** About how far the rings leave their straight course, mm; up to 3. */
  readonly waviness: number;
  /** Where the waves stand, radians: three numbers for y and three for z. */
  readonly phases: readonly number[];
}

/** Wave lengths along the log, mm, and how strong each is. */
const waves = [
  [430, 0.6],
  [170, 0.3],
  [75, 0.1],
] as const;

/** A log whose waves follow from `seed`, any whole number; the same seed gives the same log. */
export function madeUpLog(
  seed: number,
  { ringWidth = 5, taper = 0.012, waviness = 2 }: Partial<Omit<RingLog, 'phases'>> = {},
): RingLog {
  // Steps of the golden ratio spread the phases evenly and never repeat.
  const phases = Array.from(
    { length: 6 },
    (_, i) => (((seed * 6 + i + 1) * 0.618033988749895) % 1) * 2 * Math.PI,
  );
  return { ringWidth, taper, waviness, phases };
}

/** How far the rings at distance r have wandered at x, mm, for one direction across the log. */
function wander(x: number, r: number, log: RingLog, first: number): number {
  let sum = 0;
  for (let k = 0; k < waves.length; k++) {
    const [length, strength] = waves[k]!;
    const phase = log.phases[first + k]! + r / 60;
    sum += strength * (Math.sin((2 * Math.PI * x) / length + phase) - Math.sin(phase));
  }
  return sum * log.waviness;
}

/**
 * Which ring runs through a point: rings counted from the pith at x = 0, whole on the border of a year. It grows
 * steadily outwards; lines of equal value on a face are its growth-ring figure. Any point; any log of `madeUpLog`.
 */
export function ringField([x, y, z]: LogPoint, log: RingLog): number {
  const plain = Math.hypot(y, z);
  const r = Math.hypot(y - wander(x, plain, log, 0), z - wander(x, plain, log, 3));
  return (r + log.taper * x) / log.ringWidth;
}

/**
 * Angle, degrees from 0 to 90, between the rings and the wide face of a piece at a point of its own frame
 * (mm from its center): 0 flat-sawn, 90 quarter-sawn. NaN at the pith, which has no ring.
 */
export function ringAngle(piece: LogPiece, at: Point = [0, 0]): number {
  const [x, y] = toLog(piece, at);
  const r = Math.hypot(x, y);
  const turn = radians(piece.turn);
  // The share of the width that points away from the pith.
  const outwards = Math.abs(x * Math.cos(turn) + y * Math.sin(turn)) / r;
  return r === 0 ? Number.NaN : (Math.asin(Math.min(1, outwards)) * 180) / Math.PI;
}

/** What a board is called by the angle of its rings to the face: 30 and 60 degrees divide. Common practice. */
export type Cut = 'flat-sawn' | 'rift-sawn' | 'quarter-sawn';
export const cutOf = (angle: number): Cut =>
  angle < 30 ? 'flat-sawn' : angle < 60 ? 'rift-sawn' : 'quarter-sawn';

/** Distance, mm, from the pith to the farthest corner of a piece: beyond the bark there is no wood. */
export const reachOf = (piece: LogPiece): number =>
  Math.max(
    ...[-1, 1].flatMap((x) =>
      [-1, 1].map((y) => Math.hypot(...toLog(piece, [(x * piece.width) / 2, (y * piece.thickness) / 2]))),
    ),
  );
