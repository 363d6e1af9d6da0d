/** From a box to what `calc/square/accuracy` needs: how it is cut, and the reader's own errors. */
import type { Cut, Errors } from '../../calc/square/accuracy.ts';
import { isMitered } from '../subjects/joints/corners.ts';
import type { Design } from './design.ts';
import type { Plan } from './plan.ts';

/** Which clearance of the lid is at stake; a hinged lid has none. */
export type LidClearance = 'on the dampest day' | 'today' | 'none';

/**
 * The cuts of a box that has a plan. A sliding lid is judged by its play on the dampest day, where that is known; a
 * lift-off lid by its room on both sides of the liner.
 */
export function cutOf(design: Design & { readonly plan: Plan }): { cut: Cut; lid: LidClearance } {
  const { plan, corners, box, lid, values } = design;
  const damp = values.lidPlayDamp;
  const fromLid: readonly [number, LidClearance] =
    box.kind === 'sliding'
      ? box.lid === 'solid' && Number.isFinite(damp)
        ? [damp, 'on the dampest day']
        : [lid?.playToday ?? 0, 'today']
      : box.kind === 'lift-off'
        ? [2 * box.lidRoom, 'today']
        : [0, 'none'];
  const fingers = box.joint === 'finger' ? Math.max(0, ...corners.map(({ segments }) => segments.length)) : 0;
  return {
    cut: {
      height: plan.height,
      wall: plan.wall,
      mitered: isMitered(box),
      steps: Math.floor(fingers / 2),
      lidClearance: fromLid[0],
    },
    lid: fromLid[1],
  };
}

export const errorsOf = ({ box }: Design): Errors => ({
  angle: box.angleError,
  length: box.lengthError,
  step: box.stepError,
});
