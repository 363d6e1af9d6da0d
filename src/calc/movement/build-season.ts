/**
 * In which season to build: what each day of the year asks of a panel whose wood has settled into that year.
 *
 * Built in the dampest week, a panel needs hardly any gap; in the driest, all of it. The play on the driest day is
 * the same either way, if the gap is right for the day. A gap by habit is right in some seasons only: here is which.
 */

import { DAYS_IN_YEAR } from '../air/year.ts';
import { isRefused, type Refused } from '../core/refusal.ts';
import { changeOver, type PanelSetup, refusePanel } from './panel-year.ts';

/** One stretch of days, ends included; `to` is below `from` when it runs over New Year. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What each build day asks. Arrays by day of the year, 0 to 364. */
export interface BuildSeason {
  /** Play to leave (mm) when built on that day. */
  readonly playToLeave: Float64Array;
  /** Engagement (mm) left at the worse side on the driest day, crept, when built on that day with the setup's play. */
  readonly creptAtDriest: Float64Array;
  /** Days on which the setup's own play neither jams nor, crept, drops out in the year that follows. */
  readonly safe: readonly Stretch[];
  /** Build days that need the least and the most play. */
  readonly leastDay: number;
  readonly mostDay: number;
}

/** The settled year seen from `day` on: 366 values, the last a year later. */
export function fromDay(mean: Float64Array, day: number): Float64Array {
  return Float64Array.from({ length: DAYS_IN_YEAR + 1 }, (_, i) => mean[(day + i) % DAYS_IN_YEAR]!);
}

/** Stretches of a circle of days on which `holds` is true; the whole circle is 0 to 364. */
export function stretches(holds: readonly boolean[]): Stretch[] {
  const last = holds.length - 1;
  const found: Stretch[] = [];
  if (holds.every(Boolean)) return [{ from: 0, to: last }];
  for (const [day, yes] of holds.entries()) {
    if (!yes || holds[day === 0 ? last : day - 1]) continue;
    let to = day;
    while (holds[(to + 1) % holds.length]) to = (to + 1) % holds.length;
    found.push({ from: day, to });
  }
  return found;
}

/**
 * Compares all build days of a settled year.
 * @param mean moisture of the panel by day, 365 values or more (`settledYear(...).mean`); the wood is kept in that air.
 */
export function buildSeason(setup: PanelSetup, mean: Float64Array): BuildSeason | Refused {
  const bad = refusePanel(setup);
  if (bad) return bad;
  if (mean.length < DAYS_IN_YEAR)
    return { refused: 'A whole year of moisture is needed to compare its seasons.' };
  const year = mean.subarray(0, DAYS_IN_YEAR);
  const over = changeOver(year, setup.figures);
  if (isRefused(over)) return over;
  const { width, play, groove, hold = 0, allowance = 0 } = setup;
  let [driest, dampest] = [0, 0];
  for (const [day, moisture] of year.entries()) {
    if (moisture < year[driest]!) driest = day;
    if (moisture > year[dampest]!) dampest = day;
  }
  const swelling = year.map((moisture) => over.change(width, moisture, year[dampest]!));
  const shrinking = year.map((moisture) => -over.change(width, moisture, year[driest]!));
  const creptAtDriest = shrinking.map((shrinks) => groove - play - shrinks);
  return {
    playToLeave: swelling.map((swells) => swells + allowance),
    creptAtDriest,
    safe: stretches(Array.from(year, (_, day) => swelling[day]! <= play && creptAtDriest[day]! >= hold)),
    leastDay: dampest,
    mostDay: driest,
  };
}
