/**
 * The shape a piece takes when it dries, from where it sat in the log: outline, width, thickness, cup, diamonding.
 *
 * All of it is read off the stress-free map of `log-map.ts`, which also says what is held fixed. A piece that
 * contains the pith has no such shape.
 */

import { firstRefusal, type Refused } from '../core/refusal.ts';
import { type LogPiece, type Point, radians, relaxed, type Shrinkages, toLog, turned } from './log-map.ts';

/** One long face after the change. */
export interface FaceShape {
  /** Corner to corner, mm. */
  readonly width: number;
  /** Greatest distance from the line between its corners, mm: positive hollow, negative crowned. */
  readonly cup: number;
}

/** The piece after the change, in its own frame: center at (0, 0), width along x as before. All mm and degrees. */
export interface LogShape {
  /** Closed outlines, counter-clockwise from the lower left corner; point i of one became point i of the other. */
  readonly before: readonly Point[];
  readonly after: readonly Point[];
  /** Lower (−y) and upper (+y) face of the piece's own frame, and which of them looks towards the bark. */
  readonly lower: FaceShape;
  readonly upper: FaceShape;
  readonly bark: 'lower' | 'upper';
  /** Between the middles of the edges. */
  readonly width: number;
  /** In the middle, and at the left and right edges. */
  readonly thickness: { readonly middle: number; readonly left: number; readonly right: number };
  /** How far the middle lines of width and thickness leave the right angle, degrees; positive opens lower left. */
  readonly diamonding: number;
}

const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);
/** Greatest signed distance of points from the line between the first and last; positive to the left of it. */
function bow(points: readonly Point[]): number {
  const [from, to] = [points[0]!, points.at(-1)!];
  const length = distance(from, to);
  return points.reduce((most, [x, y]) => {
    const off = ((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) / length;
    return Math.abs(off) > Math.abs(most) ? off : most;
  }, 0);
}

/**
 * The exact stress-free shape of a piece after a change of moisture.
 * @param segments straight bits each long face is drawn with, even, so that the middle is one of its points.
 * @returns a refusal for a piece without size or around the pith, and for shrinkages outside -20 to 20 %.
 */
export function shapeAfter(piece: LogPiece, shrinkages: Shrinkages, segments = 40): LogShape | Refused {
  const { width, thickness, center, turn } = piece;
  const bad = firstRefusal(
    ['width', width, 1, 1000, ' mm'],
    ['thickness', thickness, 0.5, 500, ' mm'],
    ['distance from the pith', Math.hypot(...center), 0, 2000, ' mm'],
    ['turn', turn, -360, 360, '°'],
    ['shrinkage across the rings', shrinkages.radial * 100, -20, 20, ' %'],
    ['shrinkage along the rings', shrinkages.tangential * 100, -20, 20, ' %'],
  );
  if (bad) return bad;
  const pith = turned([-center[0], -center[1]], -radians(turn));
  if (Math.abs(pith[0]) <= width / 2 && Math.abs(pith[1]) <= thickness / 2) {
    return {
      refused:
        'This piece contains the pith. Its rings cannot shrink around it without a crack, so no shape is shown.',
    };
  }

  const towards = Math.atan2(center[1], center[0]);
  const go = (x: number, y: number) => relaxed(toLog(piece, [x * width, y * thickness]), shrinkages, towards);
  const [left, right, low, high] = [go(-0.5, 0), go(0.5, 0), go(0, -0.5), go(0, 0.5)];
  const middle = go(0, 0);
  const tilt = Math.atan2(right[1] - left[1], right[0] - left[0]);
  const home = (x: number, y: number) => {
    const [logX, logY] = go(x, y);
    return turned([logX - middle[0], logY - middle[1]], -tilt);
  };

  const along = Array.from({ length: segments + 1 }, (_, i) => i / segments - 0.5);
  const across = along.slice(1, -1);
  const places: Point[] = [
    ...along.map((x): Point => [x, -0.5]),
    ...across.map((y): Point => [0.5, y]),
    ...along.toReversed().map((x): Point => [x, 0.5]),
    ...across.toReversed().map((y): Point => [-0.5, y]),
  ];
  const face = (side: number): FaceShape => {
    const line = along.map((x) => home(x, side));
    // Left of the lower face is into the wood: hollow. The upper face is the other way about.
    const cup = bow(line) * (side < 0 ? 1 : -1);
    return { width: distance(line[0]!, line.at(-1)!), cup };
  };
  const upright = Math.atan2(high[1] - low[1], high[0] - low[0]);
  const corner = ((((upright - tilt) * 180) / Math.PI + 540) % 360) - 180;
  return {
    before: places.map(([x, y]): Point => [x * width, y * thickness]),
    after: places.map(([x, y]) => home(x, y)),
    lower: face(-0.5),
    upper: face(0.5),
    bark: pith[1] < 0 ? 'upper' : 'lower',
    width: distance(left, right),
    thickness: {
      middle: distance(low, high),
      left: distance(go(-0.5, -0.5), go(-0.5, 0.5)),
      right: distance(go(0.5, -0.5), go(0.5, 0.5)),
    },
    diamonding: corner - 90,
  };
}
