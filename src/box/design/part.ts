/** What a part of the box is: its sizes, its grain, its shape in place, and what is cut into it. */

import type { Vector } from '../../geometry/convex.ts';
import type { Axis, Prism, Solid } from '../../geometry/solid.ts';
import type { Rounding } from '../../units/index.ts';

export type WallName = 'front' | 'back' | 'left' | 'right';
export const wallNames: readonly WallName[] = ['front', 'back', 'left', 'right'];
/** The way each wall is turned. */
export const outward: Readonly<Record<WallName, Vector>> = {
  front: [-1, 0, 0],
  back: [1, 0, 0],
  left: [0, -1, 0],
  right: [0, 1, 0],
};
export type PartName =
  | WallName
  | 'bottom'
  | 'lid'
  | 'pull'
  | `liner-${WallName}`
  | `lid-${WallName}`
  | 'keys'
  | 'splines';

/** Length along the grain, width across it, thickness: mm. */
export interface Size {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** A groove or rabbet in one wall, as a maker sets it up; mm. */
export interface Groove {
  readonly for: 'bottom' | 'lid';
  /** A rabbet is open at the lower edge of the wall. */
  readonly seat: 'groove' | 'rabbet';
  /** The part it is cut in, and where that part stands. */
  readonly part: PartName;
  readonly wall: WallName;
  /** Height of its lower edge above the table, in the finished box. */
  readonly bottomEdge: number;
  /** The edge of the part to set the fence from, and the wood left between that edge and the groove. */
  readonly edge: 'lower' | 'upper';
  readonly fromEdge: number;
  readonly width: number;
  readonly depth: number;
  /** Where the cut starts and stops, from the part's own left end as seen from inside the box. */
  readonly start: number;
  readonly stop: number;
  /** True where it runs out at that end; false where it stops short so that no hole shows. */
  readonly startOpen: boolean;
  readonly stopOpen: boolean;
}

/**
 * What wood is cut away for. Keys and splines are let into a joint that is cut before; the tongue is the rabbet under a
 * panel's edge, the lap the wood a liner loses above the rim.
 */
export type CutFor = 'joint' | 'key' | 'spline' | 'groove' | 'stopped groove' | 'tongue' | 'grip' | 'lap';

/** Cuts, with what they are for; one that says so already keeps it. */
export const cutFor = (purpose: CutFor, cuts: readonly Prism[]): Prism[] =>
  cuts.map((cut) => ({ ...cut, cutFor: cut.cutFor ?? purpose }));

/** One piece of wood in its place in the finished box. */
export interface Piece extends Solid {
  /** Whether it moves with the lid. */
  readonly opens: boolean;
}

export interface Part {
  readonly name: PartName;
  /** As the cut list says it: "left side". */
  readonly label: string;
  readonly count: number;
  readonly material: 'solid' | 'plywood';
  /** Axis the grain runs along in the finished box; keys and splines run across the miter. */
  readonly grain: Axis | 'across the miter';
  readonly finished: Size;
  /** Which way each finished size is rounded where it is shown: what must go in somewhere goes down. Rough sizes go up. */
  readonly round: Rounding;
  /** With the allowances for planing, trimming and jointing. */
  readonly rough: Size;
  /** A wall of a sawn box is cut as one part and becomes two pieces; keys and splines are many. */
  readonly pieces: readonly Piece[];
  /** A wall of a sawn box as it is made and glued up, before it becomes two pieces. */
  readonly whole?: Solid;
  /** Wood of all its pieces together, mm³. */
  readonly volume: number;
  /** What the maker should know, in a sentence; may be empty. */
  readonly note: string;
}
