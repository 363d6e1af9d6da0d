/**
 * How fast moisture creeps through wood, by its density and its moisture.
 *
 * Held fixed: 20 °C, across the grain; along it moisture runs many times faster, so end grain is another matter.
 * Known to a factor of about two either way: published tests disagree that much. Show the range, not the middle.
 */
import { firstRefusal, type Refused } from '../core/refusal.ts';

/** mm²/day in 1e-11 m²/s. */
const MM2_PER_DAY = 0.864;
const MOISTURES = [6, 9, 12, 15] as const;

/**
 * Transverse diffusion coefficient at 20 °C, 1e-11 m²/s, at 6, 9, 12 and 15 % MC, by specific gravity.
 * Model of Siau (Transport Processes in Wood, 1984; from memory, not seen) evaluated with the sorption
 * equation of the Wood Handbook.
 */
const TABLE: readonly (readonly [gravity: number, atMoistures: readonly number[]])[] = [
  [0.35, [5.6, 7.4, 9.7, 13]],
  [0.4, [4.3, 5.6, 7.3, 9.5]],
  [0.55, [2.2, 2.9, 3.7, 4.9]],
  [0.68, [1.4, 1.8, 2.4, 3.1]],
];

/** The factor by which the true coefficient may differ from the middle, up or down. */
const DIFFUSION_FACTOR = 2;

/** A value with its honest range. mm²/day. */
export interface DiffusionRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Straight line in the logarithm between neighbors, held level beyond the ends. */
function between(x: number, points: readonly (readonly [number, number])[]): number {
  const next = points.findIndex(([at]) => at >= x);
  if (next <= 0) return (next === 0 ? points[0]! : points.at(-1)!)[1];
  const [[x0, y0], [x1, y1]] = [points[next - 1]!, points[next]!];
  return y0 * (y1 / y0) ** ((x - x0) / (x1 - x0));
}

/**
 * Diffusion coefficient across the grain, mm²/day, between the columns and rows of the table.
 *
 * @param gravity specific gravity at 12 % MC, 0.35 to 0.68. @param moisture % MC, 2 to 20; below 6 and above 15
 * the nearest column is taken, which the factor of two covers.
 */
export function diffusionCoefficient(gravity: number, moisture: number): DiffusionRange | Refused {
  const bad = firstRefusal(
    ['specific gravity', gravity, 0.35, 0.68, ''],
    ['moisture content', moisture, 2, 20, ' %'],
  );
  if (bad) return bad;
  const column = TABLE.map(
    ([at, values]) =>
      [
        at,
        between(
          moisture,
          MOISTURES.map((m, i) => [m, values[i]!]),
        ),
      ] as const,
  );
  const middle = between(gravity, column) * MM2_PER_DAY;
  return { low: middle / DIFFUSION_FACTOR, middle, high: middle * DIFFUSION_FACTOR };
}
