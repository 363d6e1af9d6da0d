/**
 * The fit of a panel or sliding lid over the year: the relations of `panel.ts` with the movement method that is
 * valid for its moisture contents.
 */

import { isRefused, type Refused } from '../../src/calc/core/refusal.ts';
import { type DirectionFigures, type Movement, movement } from '../../src/calc/movement/movement.ts';
import {
  engagementCentral,
  engagementCrept,
  playAtDriest,
  playToday,
  widthToCut,
} from '../../src/calc/movement/panel.ts';

/** What decides the fit: sizes in mm, moisture contents in %. */
export interface PanelSetting {
  /** Clear opening between the grooved walls. */
  readonly opening: number;
  /** Depth of each groove. */
  readonly grooveDepth: number;
  /** Figures across the panel; for a board of a known wood see `widthFigures`. */
  readonly figures: DirectionFigures;
  /** Moisture content of the panel as it is cut. */
  readonly today: number;
  /** Moisture contents it settles to in the driest and the dampest air of the year. */
  readonly driest: number;
  readonly dampest: number;
  /** Play left in all on the dampest day. */
  readonly allowance: number;
}

/** The fit, in mm. Exact: round the width down and the gaps up. */
export interface PanelFit {
  /** Width to cut today. */
  readonly width: number;
  /** Gap at each side today, panel central. */
  readonly gapPerSide: number;
  readonly playToday: number;
  /** Play on the driest day, both sides together. On the dampest day it is the allowance. */
  readonly playAtDriest: number;
  /** Engagement on the driest day at each side, panel central; below zero it drops out. */
  readonly engagementCentral: number;
  /** The same at the worse side, crept to the other. */
  readonly engagementCrept: number;
  /** How much the panel grows from today to the dampest day, and shrinks to the driest (both positive). */
  readonly swelling: number;
  readonly shrinking: number;
  /** Equivalent movement per 1 % MC over the swelling and the shrinking, to show the relations of `panel.ts` with. */
  readonly coefficientUp: number;
  readonly coefficientDown: number;
  /** Points of moisture content up and down from today. */
  readonly rise: number;
  readonly fall: number;
  /** Which method each way, and why. */
  readonly up: Movement;
  readonly down: Movement;
}

/**
 * Fits a panel between grooves. Air that is never damper (or drier) than today counts as no rise (or fall).
 * Refuses what `movement` refuses, and a panel with no width left.
 */
export function fitPanel(setting: PanelSetting): PanelFit | Refused {
  const { opening, grooveDepth, figures, today, allowance } = setting;
  const dampest = Math.max(today, setting.dampest);
  const driest = Math.min(today, setting.driest);
  const between = opening + 2 * grooveDepth;
  if (!(opening > 0 && grooveDepth > 0 && between - allowance > 0 && allowance >= 0))
    return { refused: 'The opening and the groove depth must be more than 0, and leave the panel a width.' };
  // Both methods are proportional to the width, so the movement of 1 mm gives the coefficient.
  const unitUp = movement(1, today, dampest, figures);
  const unitDown = movement(1, today, driest, figures);
  if (isRefused(unitUp)) return unitUp;
  if (isRefused(unitDown)) return unitDown;
  const rise = dampest - today;
  const fall = today - driest;
  const coefficientUp = rise > 0 ? unitUp.change / rise : 0;
  const coefficientDown = fall > 0 ? -unitDown.change / fall : 0;
  const width = widthToCut.compute({ B: between, C: coefficientUp, u: rise, c: allowance });
  const play = playToday.compute({ W: width, C: coefficientUp, u: rise, c: allowance });
  const dry = { W: width, C: coefficientDown, f: fall, p: play };
  return {
    width,
    gapPerSide: play / 2,
    playToday: play,
    playAtDriest: playAtDriest.compute(dry),
    engagementCentral: engagementCentral.compute({ ...dry, g: grooveDepth }),
    engagementCrept: engagementCrept.compute({ ...dry, g: grooveDepth }),
    swelling: width * coefficientUp * rise,
    shrinking: width * coefficientDown * fall,
    coefficientUp,
    coefficientDown,
    rise,
    fall,
    up: { ...unitUp, change: unitUp.change * width },
    down: { ...unitDown, change: unitDown.change * width },
  };
}
