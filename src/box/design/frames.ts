/**
 * The four walls as they are glued up: one frame for a sliding-lid or a sawn box, two for a lift-off lid.
 * From a frame come its corners, its grooves and its wall parts. Heights inside a frame count from its lower edge.
 */

import { joints } from './joints/index.ts';
import type { Corner, Layout } from './joints/joint.ts';
import type { Band, Plan } from './plan.ts';

export interface Frame {
  readonly of: 'box' | 'lid';
  /** Height of its lower edge above the table. */
  readonly low: number;
  /** Height of its sides and back, and of its front. */
  readonly height: number;
  readonly frontHeight: number;
  /** Grooves, in heights from the table as it is glued up. */
  readonly bands: readonly Band[];
  readonly corners: Readonly<Record<'front' | 'back', Corner>>;
}

type Zones = readonly (readonly [number, number])[];

/** The frames of a box, from the table up. */
export function frames(plan: Plan): readonly Frame[] {
  const { values, height, rim, frontTop, sawn, bottomBand, lidBand } = plan;
  const lidFloor = lidBand.low;
  const boxZone = [bottomBand.high, rim] as const;
  switch (values.kind) {
    case 'sliding':
      return [
        frame(plan, 'box', 0, height, frontTop, [bottomBand, lidBand], {
          front: [[bottomBand.high, frontTop]],
          back: [[bottomBand.high, lidFloor]],
        }),
      ];
    case 'lift-off': {
      const lidHeight = height - rim;
      const lidZone: Zones = [[0, lidFloor - rim]];
      return [
        frame(plan, 'box', 0, rim, rim, [bottomBand], { front: [boxZone], back: [boxZone] }),
        frame(plan, 'lid', rim, lidHeight, lidHeight, [lidBand], { front: lidZone, back: lidZone }),
      ];
    }
    case 'sawn': {
      const glued = height + sawn;
      const raisedBand = { ...lidBand, low: lidBand.low + sawn, high: lidBand.high + sawn };
      const zones: Zones = [boxZone, [rim + sawn, raisedBand.low]];
      return [frame(plan, 'box', 0, glued, glued, [bottomBand, raisedBand], { front: zones, back: zones })];
    }
  }
}

function frame(
  plan: Plan,
  of: 'box' | 'lid',
  low: number,
  height: number,
  frontHeight: number,
  bands: readonly Band[],
  keyZones: Readonly<Record<'front' | 'back', Zones>>,
): Frame {
  const { frontTop, bottomBand, values } = plan;
  const corner = (end: 'front' | 'back', endHeight: number): Corner => {
    const layout: Layout = joints[values.joint].layout(
      { height, endHeight, keyZones: keyZones[end], boxZone: frontTop - bottomBand.high },
      plan,
    );
    return { ...layout, of, end, height, endHeight };
  };
  return {
    of,
    low,
    height,
    frontHeight,
    bands,
    corners: { front: corner('front', frontHeight), back: corner('back', height) },
  };
}
