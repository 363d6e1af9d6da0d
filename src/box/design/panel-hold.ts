/**
 * How bottom and lid panel sit in their grooves: their sizes with the gap left today, and their hold over the year.
 * The reader's own gaps decide where there is an input for them; a lid panel held in all four walls gets the gap its
 * wood needs. Along the grain solid wood keeps 0.5 mm in all; plywood keeps the same room on every edge.
 */
import { bottomFloats } from '../subjects/movement/results.ts';
import type { Plan } from './plan.ts';

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

/** The bottom in its groove or rabbet; its numbers are those of the box's results. */
export function fitBottom({ values: v, tongue, bottomBand }: Plan): FittedPanel {
  const glued = !bottomFloats(v);
  const along = v.insideLength + 2 * v.grooveDepth - v.bottomLength;
  const shared = {
    for: 'bottom',
    material: v.bottom,
    glued,
    length: v.bottomLength,
    width: v.bottomWidth,
    tongue,
    gapAcross: v.bottomPlayToday / 2,
    gapAlong: along / 2,
    playToday: v.bottomPlayToday,
  } as const;
  if (glued)
    return {
      ...shared,
      playNeeded: 0,
      playAtDampest: 0,
      playAtDriest: 0,
      engagementCentral: bottomBand.depth,
      engagementCrept: bottomBand.depth,
    };
  return {
    ...shared,
    playNeeded: known(2 * v.bottomGapNeeded),
    playAtDampest: known(v.bottomPlayDamp),
    playAtDriest: known(v.bottomPlayDry),
    engagementCentral: known(v.bottomEngagement),
    engagementCrept: known(v.bottomEngagementCrept),
  };
}

/** The lid's panel: running in its grooves and out over the front, or held in all four walls of the lid. */
export function fitLid({ values: v, lidThickness }: Plan): FittedPanel {
  const along = v.insideLength + 2 * v.lidGrooveDepth - v.lidLength;
  return {
    for: 'lid',
    material: v.lid,
    glued: false,
    length: v.lidLength,
    width: v.lidWidth,
    tongue: lidThickness,
    gapAcross: v.lidPlayToday / 2,
    // Closed, a sliding lid stops against the bottom of the back's groove, flush with the front.
    gapAlong: v.kind === 'sliding' ? 0 : along / 2,
    playToday: v.lidPlayToday,
    playNeeded: known(v.lidPlayNeeded),
    playAtDampest: known(v.lidPlayDamp),
    playAtDriest: known(v.lidPlayDry),
    engagementCentral: known(v.lidEngagementCentral),
    engagementCrept: known(v.lidEngagement),
  };
}
