/**
 * A year of air put to the bottom or the lid of the box: the moisture of the panel day by day, what it moves by, and
 * its life from the day of building on. Bare wood; the inside of a closed box counts as sealed (`calc/air/slab.ts`).
 */
import { diffusionCoefficient } from '../../../calc/air/diffusion-coefficient.ts';
import { waveKept } from '../../../calc/air/diffusion-series.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { DAYS_IN_YEAR, moistureThrough, type YearOfAir } from '../../../calc/air/year.ts';
import { settledMean, wavesOf } from '../../../calc/air/year-by-waves.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import {
  type DirectionFigures,
  perPointFromShrinkage,
  widthFigures,
} from '../../../calc/movement/movement.ts';
import { panelPractice } from '../../../calc/movement/panel.ts';
import { changeOver, type PanelSetup } from '../../../calc/movement/panel-year.ts';
import { woodById } from '../../wood/woods.ts';
import { panelOf } from './panel-state.ts';
import type { MovementValues, PanelName } from './results.ts';

/** % MC by day, 0 to 365. `slow` and `fast` are the ends of what is known of the diffusion coefficient. */
export interface PanelMoisture {
  /** What wood would settle at in the air of that day. */
  readonly air: Float64Array;
  readonly slow: Float64Array;
  readonly middle: Float64Array;
  readonly fast: Float64Array;
  /** Of the yearly wave, slow and fast: days behind the air, and share of its swing, 0 to 1. */
  readonly lag: readonly [slow: number, fast: number];
  readonly kept: readonly [slow: number, fast: number];
  /** Diffusion coefficient, mm²/day, its middle; 0 where none is known and the panel is taken to follow at once. */
  readonly diffusion: number;
  /** Why it is taken to follow at once. */
  readonly because?: string;
}

/** Moisture of a bare panel (mm, specific gravity) that is the side of a closed box, in a settled year of this air. */
export function panelMoisture(thickness: number, gravity: number, year: YearOfAir): PanelMoisture | Refused {
  const moisture = moistureThrough(year);
  if (isRefused(moisture)) return moisture;
  const air = Float64Array.from({ length: DAYS_IN_YEAR + 1 }, (_, day) => moisture(day % DAYS_IN_YEAR));
  const waves = wavesOf(air);
  if (isRefused(waves)) return waves;
  const diffusion = diffusionCoefficient(gravity, waves.cosine[0]!);
  if (isRefused(diffusion)) {
    const because = `How fast moisture runs through this wood is not known here, so the panel is shown as if it followed the air at once. ${diffusion.refused}`;
    return { air, slow: air, middle: air, fast: air, lag: [0, 0], kept: [1, 1], diffusion: 0, because };
  }
  const slab = (D: number) => ({ thickness: 2 * thickness, diffusion: D, surface: ROOM_SURFACE });
  const { low, middle, high } = diffusion;
  const [slow, between, fast] = [low, middle, high].map((D) => settledMean(waves, slab(D)));
  const [late, early] = [low, high].map((D) => waveKept(slab(D), DAYS_IN_YEAR));
  for (const found of [slow, between, fast, late, early]) if (isRefused(found)) return found;
  const [wave, soon] = [late, early] as [{ kept: number; lag: number }, { kept: number; lag: number }];
  return {
    air,
    slow: slow as Float64Array,
    middle: between as Float64Array,
    fast: fast as Float64Array,
    lag: [wave.lag, soon.lag],
    kept: [wave.kept, soon.kept],
    diffusion: middle,
  };
}

const remembered = new Map<string, PanelMoisture | Refused>();

/** `panelMoisture` of one panel of the box. All labs of a page ask for the same few years, so the last ones are kept. */
export function moistureOf(v: MovementValues, part: PanelName, year: YearOfAir, gravity = v.specificGravity) {
  const thickness = part === 'bottom' ? v.bottomThickness : v.lidThickness;
  const key = [thickness, gravity, ...year.humidity, ...year.temperature].join();
  const found = remembered.get(key) ?? panelMoisture(thickness, gravity, year);
  if (remembered.size > 30) remembered.clear();
  remembered.set(key, found);
  return found;
}

/** What is known of the movement of a panel of the box's wood and cut; plywood is looked at as solid wood here. */
export function figuresOf(v: MovementValues): DirectionFigures {
  const wood = woodById(v.species);
  return wood ? widthFigures(wood, v.ringAngle) : {};
}

/** A panel of the box as the year takes it: mm. `hold` is 0, so it counts as dropped out when nothing is left in the groove. */
export function setupOf(v: MovementValues, part: PanelName): PanelSetup {
  const { width, groove, play } = panelOf(v, part);
  return { width, groove, play, figures: figuresOf(v), allowance: allowanceOf(part) };
}

/** Play to keep on the dampest day, both sides together, mm: common practice, see `panelPractice`. */
export const allowanceOf = (part: PanelName): number =>
  part === 'bottom' ? 2 * panelPractice.panelAllowancePerSide : panelPractice.lidAllowance;

/** What a day of building asks, for the relations of `calc/movement/panel.ts`. */
export interface DayOfBuilding {
  /** Moisture of the panel on that day, and at the driest and dampest of the year that follows, %. */
  readonly today: number;
  readonly driest: number;
  readonly dampest: number;
  /** Movement per 1 % MC as a fraction of the width on that day, by the method that holds all year. */
  readonly perPoint: number;
  readonly method: 'coefficient' | 'shrinkage';
  readonly because: string;
}

/** Reads a year of moisture from one day on. Refuses as `movement` does. */
export function dayOfBuilding(
  figures: DirectionFigures,
  mean: Float64Array,
  day: number,
): DayOfBuilding | Refused {
  const over = changeOver(mean, figures);
  if (isRefused(over)) return over;
  const today = mean[day]!;
  const perPoint =
    over.method === 'coefficient'
      ? figures.coefficient!
      : perPointFromShrinkage.compute({ S: figures.shrinkage!, M_i: today });
  const [driest, dampest] = mean.reduce(
    ([low, high], each) => [Math.min(low, each), Math.max(high, each)] as [number, number],
    [today, today] as [number, number],
  );
  return { today, driest, dampest, perPoint, method: over.method, because: over.because };
}
