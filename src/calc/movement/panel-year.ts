/**
 * What a year does to a panel in its grooves, or to a sliding lid: play and engagement day by day.
 *
 *   play(t) = p − [D(M(t)) − D(M₀)]      central: g − play/2      crept to one side: g − play
 *
 * Symbols: p play left on the day of building, both sides together (mm), D width across the grain (mm), M moisture
 * of the panel (%), M₀ that of the day of building, g groove depth (mm).
 * Held fixed: the grooves, because the walls run their long grain that way; the panel is free and flat. One movement
 * method serves the whole year, so that the curve has no step where a coefficient's range ends.
 */

import { firstRefusal, isRefused, type Refused } from '../core/refusal.ts';
import { changeByCoefficient, changeByShrinkage, type DirectionFigures, movement } from './movement.ts';

/** A panel, its grooves and its fit on the day it is built. All mm. */
export interface PanelSetup {
  /** Across the grain, on the day of building. */
  readonly width: number;
  /** Movement of the width; see `widthFigures`. */
  readonly figures: DirectionFigures;
  /** Play left, both sides together. */
  readonly play: number;
  /** Depth of each groove. */
  readonly groove: number;
  /** Engagement below which it counts as dropped out; 0 unless given. */
  readonly hold?: number;
  /** Play that should be left on the dampest day; 0 unless given. */
  readonly allowance?: number;
}

/** The life of the panel. Arrays by day, index 0 the day of building. All mm. */
export interface PanelCourse {
  /** Both sides together. Below zero the panel wants to be wider than its grooves: it jams and pushes. */
  readonly play: Float64Array;
  /** Engagement at each side, panel central. */
  readonly central: Float64Array;
  /** Engagement at the worse side, panel crept to the other. */
  readonly crept: Float64Array;
  /** First day it jams, drops out while central, drops out once crept; undefined: never. */
  readonly jams: number | undefined;
  readonly dropsCentral: number | undefined;
  readonly dropsCrept: number | undefined;
  /** Play to leave on the day of building so that the allowance is left on the dampest day. Round up. */
  readonly playToLeave: number;
  readonly method: 'coefficient' | 'shrinkage';
  readonly because: string;
}

/** A change of size that keeps to one method over a whole span of moisture. */
interface SpanChange {
  /** Change (mm) of a size of `width` mm at moisture `from`, on going `to`. */
  readonly change: (width: number, from: number, to: number) => number;
  readonly method: 'coefficient' | 'shrinkage';
  readonly because: string;
}

/** Chooses the method that holds for all the moistures given. Refuses as `movement` does. */
export function changeOver(moisture: ArrayLike<number>, figures: DirectionFigures): SpanChange | Refused {
  let [low, high] = [moisture[0] ?? Number.NaN, moisture[0] ?? Number.NaN];
  for (let i = 1; i < moisture.length; i++) {
    low = Math.min(low, moisture[i]!);
    high = Math.max(high, moisture[i]!);
  }
  const whole = movement(1, low, high, figures);
  if (isRefused(whole)) return whole;
  const { method, because } = whole;
  const [C, S] = [figures.coefficient ?? 0, figures.shrinkage ?? 0];
  return {
    method,
    because,
    change: (D, M_i, M_f) =>
      method === 'coefficient'
        ? changeByCoefficient.compute({ D, C, M_i, M_f })
        : changeByShrinkage.compute({ D, S, M_i, M_f }),
  };
}

/** Refuses a panel or groove without size, and fits without meaning. */
export function refusePanel({
  width,
  play,
  groove,
  hold = 0,
  allowance = 0,
}: PanelSetup): Refused | undefined {
  return firstRefusal(
    ['width', width, 1, 2000, ' mm'],
    ['play', play, 0, 100, ' mm'],
    ['groove depth', groove, 0.1, 100, ' mm'],
    ['engagement to keep', hold, 0, 100, ' mm'],
    ['allowance', allowance, 0, 20, ' mm'],
  );
}

/**
 * Play and engagement day by day.
 * @param moisture mean moisture of the panel (%) from the day of building on: `fromDay` of a settled year, or the
 * `mean` of a `moistureCourse` that starts with the wood as it was bought.
 */
export function panelCourse(setup: PanelSetup, moisture: ArrayLike<number>): PanelCourse | Refused {
  const bad = refusePanel(setup);
  if (bad) return bad;
  const over = changeOver(moisture, setup.figures);
  if (isRefused(over)) return over;
  const { width, groove, hold = 0, allowance = 0 } = setup;

  const days = moisture.length;
  const [play, central, crept] = [new Float64Array(days), new Float64Array(days), new Float64Array(days)];
  let most = 0;
  for (let day = 0; day < days; day++) {
    const growth = over.change(width, moisture[0]!, moisture[day]!);
    most = Math.max(most, growth);
    play[day] = setup.play - growth;
    // A jammed panel fills its grooves; it cannot go deeper.
    central[day] = Math.min(groove, groove - play[day]! / 2);
    crept[day] = Math.min(groove, groove - play[day]!);
  }
  const first = (series: Float64Array, low: number) => {
    // A picometer: a gap made to vanish on the dampest day is not a jam.
    const found = series.findIndex((value) => value < low - 1e-9);
    return found === -1 ? undefined : found;
  };
  return {
    play,
    central,
    crept,
    jams: first(play, 0),
    dropsCentral: first(central, hold),
    dropsCrept: first(crept, hold),
    playToLeave: most + allowance,
    method: over.method,
    because: over.because,
  };
}
