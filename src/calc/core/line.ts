/**
 * The straight line nearest to some points, by least squares, and how far its slope can be trusted.
 *
 *   b = Σ (x − x̄)(y − ȳ) / Σ (x − x̄)²      s_b² = Σ r² / ((n − 2) Σ (x − x̄)²)      b ± t s_b
 *
 * Symbols: b slope, r what the line leaves over, s_b standard error of the slope, t Student's factor for n − 2 degrees
 * of freedom and 95 %. Held fixed: x is known, the errors of y are alike and do not hang together.
 */

export interface Line {
  readonly slope: number;
  /** Middle of the points, through which the line runs. */
  readonly middle: readonly [x: number, y: number];
  /** Σ (x − x̄)². */
  readonly spread: number;
  /** Standard error of the slope; without it there are only two points, and any line fits. */
  readonly error?: number;
}

type Point = readonly [x: number, y: number];

/** The line through two or more points; undefined where all stand at one x. */
export function lineThrough(points: readonly Point[]): Line | undefined {
  const n = points.length;
  const mean = (of: 0 | 1) => points.reduce((sum, point) => sum + point[of], 0) / n;
  const [mx, my] = [mean(0), mean(1)];
  const spread = points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
  if (n < 2 || !(spread > 0)) return undefined;
  const slope = points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) / spread;
  const left = points.reduce((sum, [x, y]) => sum + (y - my - slope * (x - mx)) ** 2, 0);
  return {
    slope,
    middle: [mx, my],
    spread,
    ...(n > 2 && { error: Math.sqrt(left / (n - 2) / spread) }),
  };
}

/** Student's t, two sides, 95 %, for 1 to 30 degrees of freedom: the printed table. */
const table = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
  2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
];

/** The factor on a standard error that covers 95 % with so many degrees of freedom, 1 or more; past the table its last one. */
export const student95 = (degrees: number): number => table[Math.min(table.length, degrees) - 1]!;

/**
 * How far the slope may lie off, the wider of two: as the points scatter, by `student95`, and as it could be if each y were
 * misread by `reading` one way or the other, Σ|x − x̄| reading / Σ (x − x̄)².
 */
export function slopeWithin(points: readonly Point[], line: Line, reading: number): number {
  const misread =
    (reading * points.reduce((sum, [x]) => sum + Math.abs(x - line.middle[0]), 0)) / line.spread;
  const scatter = line.error === undefined ? 0 : student95(points.length - 2) * line.error;
  return Math.max(misread, scatter);
}
