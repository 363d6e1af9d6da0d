/**
 * How bottom and lid panel sit in their grooves: their sizes with the gap left today, and their hold over the year.
 * The reader's own gaps decide where there is an input for them; a lid panel held in all four walls gets the gap its
 * wood needs. Along the grain solid wood keeps 0.5 mm in all; plywood keeps the same room on every edge.
 */
import { panelPractice, widthToCut } from '../../calc/panel.ts';
import type { Plan } from './plan.ts';
import { practice } from './practice.ts';

/** A panel in its grooves; mm. What the tables have no figure for is `undefined`. */
export interface FittedPanel {
  readonly for: 'bottom' | 'lid';
  readonly material: 'solid' | 'plywood';
  readonly glued: boolean;
  /** Along the grain, across it, and thickness of the edge in the groove. Exact: round down. */
  readonly length: number;
  readonly width: number;
  readonly tongue: number;
  /** Gap today at each edge, panel central: beside it, and at its ends (at a sliding lid's back end). */
  readonly gapAcross: number;
  readonly gapAlong: number;
  /** Free play across the grain, both sides together: today, what it would need today, and over the year. */
  readonly playToday: number;
  readonly playNeeded: number | undefined;
  readonly playAtDampest: number | undefined;
  readonly playAtDriest: number | undefined;
  /** Hold in the groove at each side on the driest day: central, and at the worse side when crept to the other. */
  readonly engagementCentral: number | undefined;
  readonly engagementCrept: number | undefined;
}

const known = (value: number) => (Number.isFinite(value) ? value : undefined);

/** The bottom in its groove or rabbet. */
export function fitBottom(plan: Plan): FittedPanel {
  const { values: v, wall, length, width, bottomBand } = plan;
  const glued = v.bottomFit === 'glued';
  const gap = glued ? 0 : Math.max(0, v.bottomGap);
  const gapAlong = glued ? 0 : v.bottom === 'solid' ? practice.alongGrain / 2 : gap;
  const reach = 2 * (wall - bottomBand.depth);
  const shared = {
    for: 'bottom',
    material: v.bottom,
    glued,
    length: length - reach - 2 * gapAlong,
    width: width - reach - 2 * gap,
    tongue: plan.tongue,
    gapAcross: gap,
    gapAlong,
    playToday: 2 * gap,
  } as const;
  if (glued) return { ...shared, playNeeded: 0, ...still(bottomBand.depth, 0) };
  return {
    ...shared,
    playNeeded: known(2 * v.bottomGapNeeded),
    playAtDampest: known(v.bottomPlayDamp),
    playAtDriest: known(bottomBand.depth - v.bottomEngagementCrept),
    engagementCentral: known(v.bottomEngagement),
    engagementCrept: known(v.bottomEngagementCrept),
  };
}

/** The lid's panel: running in its grooves and out over the front, or held in all four walls of the lid. */
export function fitLid(plan: Plan): FittedPanel {
  const { values: v, wall, length, width, lidBand, lidThickness } = plan;
  const reach = wall - lidBand.depth;
  const between = width - 2 * reach;
  const shared = { for: 'lid', material: v.lid, glued: false, tongue: lidThickness } as const;
  if (v.kind === 'sliding') {
    const play = Math.max(0, v.lidPlay);
    return {
      ...shared,
      // Closed, it stops against the bottom of the back's groove, flush with the front.
      length: length - reach,
      width: between - play,
      gapAcross: play / 2,
      gapAlong: 0,
      playToday: play,
      playNeeded: known(v.lidPlayNeeded),
      playAtDampest: known(v.lidPlayDamp),
      playAtDriest: known(v.lidPlayDry),
      engagementCentral: known(lidBand.depth - v.lidPlayDry / 2),
      engagementCrept: known(v.lidEngagement),
    };
  }
  const solid = v.lid === 'solid';
  const gapAlong = solid ? practice.alongGrain / 2 : practice.plywoodRoom;
  const allowance = 2 * panelPractice.panelAllowancePerSide;
  const rise = v.moistureDamp - v.moistureToday;
  const fall = v.moistureToday - v.moistureDry;
  const needed = widthToCut.compute({ B: between, C: v.movementUp, u: rise, c: allowance });
  const cut = solid ? (known(needed) ?? between - allowance) : between - 2 * practice.plywoodRoom;
  const play = between - cut;
  const dry = play + cut * v.movementDown * fall;
  return {
    ...shared,
    length: length - 2 * reach - 2 * gapAlong,
    width: cut,
    gapAcross: play / 2,
    gapAlong,
    playToday: play,
    ...(solid
      ? {
          playNeeded: known(between - needed),
          playAtDampest: known(play - cut * v.movementUp * rise),
          playAtDriest: known(dry),
          engagementCentral: known(lidBand.depth - dry / 2),
          engagementCrept: known(lidBand.depth - dry),
        }
      : { playNeeded: play, ...still(lidBand.depth, play) }),
  };
}

/** A panel that is taken not to move. */
const still = (depth: number, play: number) => ({
  playAtDampest: play,
  playAtDriest: play,
  engagementCentral: depth - play / 2,
  engagementCrept: depth - play,
});
