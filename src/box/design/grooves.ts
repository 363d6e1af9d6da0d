/**
 * Grooves and rabbets wall by wall: where each is cut, and where a through cut would leave a hole at the corner.
 * A wall whose wood fills the corner at groove height is stopped at wall − depth from the corner, which is where the
 * panel's edge needs it; its mate runs out into the socket, where nothing shows.
 */
import { grooveStop } from '../../calc/grooves/groove-corner.ts';
import { type Prism, slot } from '../../geometry/solid.ts';
import type { Frame } from './frames.ts';
import { joints } from './joints/index.ts';
import { type Groove, type WallName, wallNames } from './part.ts';
import type { Band, Plan } from './plan.ts';

export const isSide = (wall: WallName) => wall === 'left' || wall === 'right';

/** One groove and what it takes away, in heights of the frame as glued up. */
export interface CutGroove {
  readonly groove: Groove;
  readonly cut: Prism;
}

/** Every groove of a frame. */
export function groovesOf(plan: Plan, frame: Frame): CutGroove[] {
  return frame.bands.flatMap((band) =>
    wallNames
      // The lid slides out over the front, so the front has no groove for it.
      .filter((wall) => !(band.for === 'lid' && wall === 'front' && plan.values.kind === 'sliding'))
      .filter(() => band.depth > 0 && band.high > band.low)
      .map((wall) => grooveIn(plan, frame, band, wall)),
  );
}

function grooveIn(plan: Plan, frame: Frame, band: Band, wall: WallName): CutGroove {
  const { length, width, wall: thickness, values, sawn } = plan;
  const joint = joints[values.joint];
  const side = isSide(wall);
  const inset = side ? 0 : joint.inset(thickness);
  const run = side ? length : width;
  const lowEnd = side ? 'front' : (wall as 'front' | 'back');
  const highEnd = side ? 'back' : (wall as 'front' | 'back');
  const stopped = (end: 'front' | 'back') => {
    if (side && end === 'front' && band.for === 'lid' && values.kind === 'sliding') return false;
    const owner = side ? 'side' : 'end';
    const [low, high] = [band.low - frame.low, band.high - frame.low];
    return joint.shows(owner, frame.corners[end], plan, low, high, band.depth);
  };
  const reach = grooveStop.compute({ t: thickness, g: band.depth });
  const lowStopped = stopped(lowEnd);
  const highStopped = stopped(highEnd);
  const from = lowStopped ? reach : inset;
  const to = run - (highStopped ? reach : inset);
  // Seen from inside, the left end of the left wall is at the back, that of the back wall at the right side.
  const turned = wall === 'left' || wall === 'back';
  const [start, stop] = turned ? [run - inset - to, run - inset - from] : [from - inset, to - inset];
  const along: readonly [number, number] = [from, to];
  const near: readonly [number, number] = [reach, thickness];
  const across: readonly [number, number] =
    wall === 'left' || wall === 'front'
      ? near
      : [(side ? width : length) - thickness, (side ? width : length) - reach];
  const upper = band.for === 'lid';
  const raisedBy = upper && values.kind === 'sawn' ? sawn : 0;
  return {
    groove: {
      for: band.for,
      seat: band.seat,
      part: frame.of === 'lid' ? `lid-${wall}` : wall,
      wall,
      bottomEdge: band.low - raisedBy,
      edge: upper ? 'upper' : 'lower',
      fromEdge: upper ? frame.low + frame.height - band.high : band.low - frame.low,
      width: band.high - band.low,
      depth: band.depth,
      start,
      stop,
      startOpen: turned ? !highStopped : !lowStopped,
      stopOpen: turned ? !lowStopped : !highStopped,
    },
    cut: slot({
      x: side ? along : across,
      y: side ? across : along,
      z: [band.low - frame.low, band.high - frame.low],
    }),
  };
}
