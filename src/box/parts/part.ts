/** What a part of the box is: its sizes, its grain, its shape in place, and what is cut into it. */
import type { Solid } from './solid.ts';

export type WallName = 'front' | 'back' | 'left' | 'right';
export type PartName =
  | WallName
  | 'bottom'
  | 'lid'
  | 'pull'
  | 'liner-front'
  | 'liner-back'
  | 'liner-left'
  | 'liner-right'
  | 'lid-front'
  | 'lid-back'
  | 'lid-left'
  | 'lid-right'
  | 'keys'
  | 'splines';

/** Length along the grain, width across it, thickness: mm. */
export interface Size {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** A groove in one wall. Heights from the table; start and stop from the wall's own left end, seen from inside. */
export interface Groove {
  readonly for: 'bottom' | 'lid';
  readonly wall: WallName;
  readonly bottomEdge: number;
  readonly width: number;
  readonly depth: number;
  readonly start: number;
  readonly stop: number;
  /** Runs out at this end, or stops before it so that no hole shows. */
  readonly startOpen: boolean;
  readonly stopOpen: boolean;
}

export interface Part {
  readonly name: PartName;
  /** As the cut list says it: "left side". */
  readonly label: string;
  readonly count: number;
  readonly material: 'solid' | 'plywood' | 'veneer key';
  /** Axis the grain runs along in the finished box. */
  readonly grain: 'x' | 'y' | 'z';
  readonly finished: Size;
  /** With the allowances for planing, trimming and jointing. */
  readonly rough: Size;
  /** Missing for loose small parts (keys, splines), which are given by size only. */
  readonly solid: Solid | undefined;
  /** What the maker should know, in a sentence; may be empty. */
  readonly note: string;
}
