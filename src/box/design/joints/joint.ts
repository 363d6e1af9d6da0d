/**
 * What every corner joint answers: who fills the corner at each height, what is cut from either wall, and which
 * wall shows a groove that runs through.
 *
 * A corner is described once, where front and left side meet: x and y from the outer corner inward, heights from the
 * lower edge of the walls as they are glued up. The other three are its mirror images.
 */

import type { Prism } from '../../../geometry/solid.ts';
import type { Plan } from '../plan.ts';

export type Owner = 'side' | 'end';

/** A stretch of the corner's height and the wall whose wood fills it, in mm from the lower edge of that wall. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly owner: Owner;
  /** Where the other wall's socket for it ends, if that is further up: a front that is lowered leaves the rest of it open. */
  readonly socketTo?: number;
}

/** How a joint is laid out along the height of one corner. */
export interface Layout {
  /** Fingers, or tails (`side`) and pins (`end`) as they show on the end's outer face. Empty for miters and rabbets. */
  readonly segments: readonly Segment[];
  /** Dovetails: by how much each tail narrows at either side from there to its root. */
  readonly taper: number;
  /** Width of the thinnest part-finger at an edge; `undefined` where all are whole. */
  readonly sliver: number | undefined;
  /** Keys: where each slot lies. */
  readonly keys: readonly { readonly from: number; readonly to: number }[];
}

/** One of the two pairs of corners of a frame: both corners of that end are alike. */
export interface Corner extends Layout {
  readonly of: 'box' | 'lid';
  readonly end: 'front' | 'back';
  /** Height of the frame's sides and of this end. */
  readonly height: number;
  readonly endHeight: number;
}

/** A frame's height and its end's, and the stretches of height that no groove crosses, where keys may go. */
export interface CornerSetting {
  readonly height: number;
  readonly endHeight: number;
  readonly keyZones: readonly (readonly [low: number, high: number])[];
  /** Height of the zone in the lower part of the box, which gets the wanted number of keys. */
  readonly boxZone: number;
}

export interface Joint {
  /** By how much each end of an end wall stays inside the outer face of the side. */
  readonly inset: (wall: number) => number;
  readonly layout: (setting: CornerSetting, plan: Plan) => Layout;
  readonly sideCuts: (corner: Corner, plan: Plan) => Prism[];
  readonly endCuts: (corner: Corner, plan: Plan) => Prism[];
  /** Whether a through groove between two heights, `depth` deep, would show at the end of that wall. */
  readonly shows: (
    owner: Owner,
    corner: Corner,
    plan: Plan,
    low: number,
    high: number,
    depth: number,
  ) => boolean;
}

export const plain: Layout = { segments: [], taper: 0, sliver: undefined, keys: [] };

/** Room for rounding. */
export const noise = 1e-6;

export const overlap = (low: number, high: number, from: number, to: number) =>
  Math.min(high, to) - Math.max(low, from) > noise;
