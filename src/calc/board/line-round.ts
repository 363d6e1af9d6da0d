/**
 * A straight line of the figure, followed round a box.
 *
 *   h(x, z) = h_0 + x tan a + z / tan r
 *
 * Symbols: h height of the line above the lower edge, x along the board, z through it down from the first fresh face (all mm),
 * a slope of the line (degrees), r angle of the rings to the face (degrees).
 * One strip: front, right side, back, left side lie one after the other. A pair opened like a book: the first leaf gives front and
 * right side, the second left side and back; turned over it is walked from its far end, and its face lay deeper by the saw cut
 * and what was planed off both.
 */

export interface Wood {
  /** Outside length and width, what a cut takes off the face, and what is planed off each sawn face; mm. */
  readonly length: number;
  readonly width: number;
  readonly kerf: number;
  readonly planing: number;
  /** Degrees: 0 to 20, and 15 to 90. */
  readonly slope: number;
  readonly rings: number;
}

/** One wall, walked from its start to its end. */
export interface WallLine {
  readonly length: number;
  /** Heights of the line, mm. */
  readonly start: number;
  readonly end: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** The line on the four walls in walk-round order: front, right side, back, left side. It begins at height `from`, mm. */
export function lineRound(
  { length: L, width: W, kerf: k, planing: p, slope, rings }: Wood,
  pair: boolean,
  from: number,
): readonly WallLine[] {
  const height = (x: number, deep: number) =>
    from + x * Math.tan(radians(slope)) + deep * Math.tan(radians(90 - rings));
  const wall = (x1: number, x2: number, deep = 0): WallLine => ({
    length: Math.abs(x2 - x1),
    start: height(x1, deep),
    end: height(x2, deep),
  });
  const whole = W + k + L;
  if (!pair)
    return [
      wall(0, W),
      wall(W + k, whole),
      wall(whole + k, whole + k + W),
      wall(whole + 2 * k + W, whole + 2 * k + W + L),
    ];
  const deep = k + 2 * p;
  return [wall(0, W), wall(W + k, whole), wall(whole, whole - W, deep), wall(L, 0, deep)];
}

/** By how much the line steps at each corner, mm: front to right side, and so on; the fourth is left side to front. */
export const stepsRound = (walls: readonly WallLine[]): readonly number[] =>
  walls.map(({ end }, i) => walls[(i + 1) % walls.length]!.start - end);

/**
 * Corners at which the figure goes on, out of four, for walls that lie on one strip in this order.
 * @param order the walls from one end of the strip to the other, counted as one walks round the box: 0, 1, 2, 3
 */
export const matchesOfOrder = (order: readonly number[]): number =>
  order.filter((wall, i) => i > 0 && wall === (order[i - 1]! + 1) % 4).length;
