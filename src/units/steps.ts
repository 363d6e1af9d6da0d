/**
 * Two native grids. A reader in inches steps in inch fractions, one in mm in millimeters.
 *
 * A value is moved to the grid only when the reader moves a control. A change of units moves nothing.
 */
import { type Kind, kinds, type UnitSystem } from './kinds.ts';
import { clean, NOISE, roundSteps } from './rounding.ts';

/** Points `origin + n × step`, in the stored unit of the kind. `coarse` is a larger step, a multiple of `step`. */
export interface Grid {
  readonly step: number;
  readonly coarse: number;
  readonly origin: number;
}

/** Fine step in the unit of the field, by kind: mm and inch system. Otherwise 1. */
const fine: Partial<Record<Kind, readonly [mm: number, inch: number]>> = {
  length: [0.5, 1 / 32],
  points: [0.5, 0.5],
  ratio: [0.01, 0.01],
  lineLoad: [0.1, 0.5],
  stress: [0.1, 10],
  number: [0.1, 0.1],
};

/**
 * The grid a control of this kind steps in: by default 0.5 mm or 1/32 in, 1 %, 1 °C or 1 °F.
 * The coarse step is ten steps, eight for lengths in inches.
 * @param step another step, in the unit of the field (`fieldUnit`), positive: `0.1` for 0.1 mm, `1 / 64` for
 *   1/64 in.
 */
export function steps(kind: Kind, system: UnitSystem, step?: number): Grid {
  const { size, zero } = kinds[kind][system][0]!;
  const inches = system === 'inch';
  const one = (step ?? fine[kind]?.[inches ? 1 : 0] ?? 1) * size;
  return { step: one, coarse: one * (inches && kind === 'length' ? 8 : 10), origin: -zero * size };
}

const point = ({ origin, step }: Grid, count: number): number => clean(origin + count * step) + 0;
const place = (value: number, { origin, step }: Grid): number => (value - origin) / step;

/** The grid point nearest to a value; a tie goes away from the origin. */
export const snap = (value: number, grid: Grid): number => point(grid, roundSteps(place(value, grid)));

/** The first grid point above a value. */
export const stepUp = (value: number, grid: Grid): number =>
  point(grid, Math.floor(place(value, grid) + NOISE) + 1);

/** The first grid point below a value. */
export const stepDown = (value: number, grid: Grid): number =>
  point(grid, Math.ceil(place(value, grid) - NOISE) - 1);
