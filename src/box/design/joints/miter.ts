/** Miters: plain, with keys let in across the corner, or with a spline inside. Through grooves never show. */

import type { Prism } from '../../../geometry/solid.ts';
import { practice } from '../../core/practice.ts';
import { cutFor } from '../part.ts';
import type { Plan } from '../plan.ts';
import { type Corner, type CornerSetting, type Joint, plain } from './joint.ts';

/** Keys: at most this many in one corner. */
export const mostKeys = 50;
/** Height one key needs, as a multiple of its thickness: as much wood as key. Ours. */
export const keyShare = 2;

/** Along an edge, from the outer corner to where the slot's floor meets it: the slot is `wall` deep along the diagonal. */
export const keyLeg = (wall: number) => wall * Math.SQRT2;

/** The keys of one corner: `count` in the box, in a lid in proportion to its height, as many as fit. */
function keyLayout({ keyZones, boxZone }: CornerSetting, count: number, thickness: number) {
  const wanted = Math.min(Math.max(0, Math.round(count)), mostKeys);
  return keyZones.flatMap(([low, high]) => {
    const height = high - low;
    if (!(height > 0 && thickness > 0 && boxZone > 0)) return [];
    const fair = Math.min(wanted, Math.max(1, Math.round((wanted * height) / boxZone)));
    const number = Math.min(fair, Math.floor(height / (keyShare * thickness)));
    return Array.from({ length: number }, (_, key) => {
      const middle = low + (height * (key + 0.5)) / number;
      return { from: middle - thickness / 2, to: middle + thickness / 2 };
    });
  });
}

/** Where the spline lies, along the diagonal from the outer corner, and how deep it enters each wall; `undefined` where it does not fit. */
export function splineSection({ wall, values, bottomBand, lidBand }: Plan) {
  // As near the heel as the panels in their grooves leave room.
  const deepest = Math.max(bottomBand.depth, lidBand.depth);
  const to = (wall - deepest) * Math.SQRT2 - practice.rabbetBeyondGroove;
  const from = to - values.keyThickness;
  const depth = Math.min(wall * practice.splineShare, from / 2);
  return values.keyThickness > 0 && depth >= practice.splineLeast ? { from, to, depth } : undefined;
}

const miterCut = (half: 'side' | 'end', wall: number, height: number): Prism => ({
  axis: 'z',
  from: 0,
  to: height,
  outline: [[0, 0], half === 'side' ? [0, wall] : [wall, 0], [wall, wall]],
});

/** The slot of a key, through both walls. */
export const keySlot = (wall: number, { from, to }: { from: number; to: number }): Prism => ({
  axis: 'z',
  from,
  to,
  outline: [
    [0, 0],
    [keyLeg(wall), 0],
    [0, keyLeg(wall)],
  ],
});

/** The groove of a spline, in both walls together. */
export function splineSlot(plan: Plan, height: number): Prism | undefined {
  const section = splineSection(plan);
  if (!section) return undefined;
  const { from, to, depth } = section;
  const at = (along: number, aside: number) =>
    [(along + aside) / Math.SQRT2, (along - aside) / Math.SQRT2] as const;
  return {
    axis: 'z',
    from: 0,
    to: height,
    outline: [at(from, -depth), at(from, depth), at(to, depth), at(to, -depth)],
  };
}

const miterJoint = (
  half: (corner: Corner, plan: Plan) => Prism[],
  keys: (setting: CornerSetting, plan: Plan) => ReturnType<typeof keyLayout>,
): Joint => ({
  inset: () => 0,
  layout: (setting, plan) => ({ ...plain, keys: keys(setting, plan) }),
  sideCuts: (corner, plan) => [miterCut('side', plan.wall, corner.height), ...half(corner, plan)],
  endCuts: (corner, plan) => [miterCut('end', plan.wall, corner.height), ...half(corner, plan)],
  shows: () => false,
});

const none = () => [];

export const miter = miterJoint(none, none);

export const keyedMiter = miterJoint(
  ({ keys }, { wall }) =>
    cutFor(
      'key',
      keys.map((key) => keySlot(wall, key)),
    ),
  (setting, { values }) => keyLayout(setting, values.keyCount, values.keyThickness),
);

export const splinedMiter = miterJoint(({ height }, plan) => {
  const groove = splineSlot(plan, height);
  return cutFor('spline', groove ? [groove] : []);
}, none);
