/**
 * The box on the bench as it is seen from one side: its faces, which part of the box each belongs to, and where each part
 * is to be pointed at. Everything in mm on the sheet, right and down.
 *
 *     const picture = benchPicture(design, 'lid off', 30, 15);
 *     picture.spots.bottom;            // where a line to the bottom ends, and whether it is hidden
 *     partAt(picture, place, 20 / scale);   // what a finger means
 *     <BenchBox design picture chosen="bottom" />
 */
import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import type { Vector } from '../../geometry/convex.ts';
import { atOnce, type Steps } from '../../geometry/steps.ts';
import { onSheet, type View, viewFrom } from '../../geometry/view.ts';
import { type SeenFace, type Shown, visibleInSteps } from '../../geometry/visible.ts';
import { type PartOfBox, type Region, regionsOf } from './parts-of-box.ts';
import { type Pose, posed } from './poses.ts';
import { type Spot, spotsOf } from './spots.ts';

export interface BenchPicture {
  readonly view: View;
  readonly pose: Pose;
  readonly shown: readonly Shown<Part>[];
  readonly seen: readonly SeenFace<Part>[];
  readonly regions: readonly Region[];
  readonly spots: Readonly<Record<PartOfBox, Spot>>;
  /** Left, top, width and height of a sheet on which it may be turned all round without leaving it, and without another scale. */
  readonly sheet: readonly [left: number, top: number, width: number, height: number];
}

/** The eye is so high above the table where all three axes have one scale, degrees. */
const usualHeight = (Math.atan(Math.SQRT1_2) * 180) / Math.PI;

/** Turn and tip in degrees as the reader moves them: 0 and 0 is the view of all other drawings, equal along all axes. */
export const viewOf = (turn: number, tip: number): View => viewFrom(45 + turn, usualHeight + tip);

/** Room for heavy edges, as a share of the sheet. */
const margin = 0.02;

/** What all turns about the upright axis through the middle may take up. */
function sheetOf(shown: readonly Shown<Part>[], view: View): BenchPicture['sheet'] {
  const corners = shown.flatMap(({ solid: { block }, move = (point: Vector) => point }) =>
    block.x.flatMap((x) => block.y.flatMap((y) => block.z.map((z) => move([x, y, z])))),
  );
  if (corners.length === 0) return [0, 0, 1, 1];
  const range = (axis: 0 | 1) => {
    const all = corners.map((corner) => corner[axis]);
    return (Math.min(...all) + Math.max(...all)) / 2;
  };
  const [x, y] = [range(0), range(1)];
  const [middle, level] = onSheet(view, [x, y, 0]);
  const [sin, cos] = [Math.abs(view.into[2]), view.up[2]];
  let [wide, top, foot] = [0, Infinity, -Infinity];
  for (const [cx, cy, z] of corners) {
    const off = Math.hypot(cx - x, cy - y);
    wide = Math.max(wide, off);
    top = Math.min(top, level - z * cos - off * sin);
    foot = Math.max(foot, level - z * cos + off * sin);
  }
  const edge = margin * Math.max(2 * wide, foot - top);
  return [middle - wide - edge, top - edge, 2 * (wide + edge), foot - top + 2 * edge];
}

/** @param turn degrees from the usual view, any @param tip degrees from it, upward the eye rises */
export const benchPicture = (...of: Parameters<typeof pictureInSteps>): BenchPicture =>
  atOnce(pictureInSteps(...of));

/** The same, with a pause possible after each small step. */
export function* pictureInSteps(design: Design, pose: Pose, turn: number, tip: number): Steps<BenchPicture> {
  const view = viewOf(turn, tip);
  const shown = posed(design, pose);
  const seen = yield* visibleInSteps(view, shown);
  const regions = regionsOf(seen, design.plan, view);
  yield;
  const spots = spotsOf(design, shown, regions, view);
  return { view, pose, shown, seen, regions, spots, sheet: sheetOf(shown, view) };
}
