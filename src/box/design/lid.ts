/** What belongs to the way the box opens: the run of a sliding lid and its pull, and the hinges of a sawn one. */

import type { Prism } from '../../geometry/solid.ts';
import { practice } from '../core/practice.ts';
import { roughSize } from './allowance.ts';
import type { FittedPanel } from './panel-hold.ts';
import type { Part, WallName } from './part.ts';
import type { Plan } from './plan.ts';
import { holeFits, leastNotch, shortestNotched } from './refusals/opening.ts';

/** A thumb notch, gouged across the middle of the lid's front end; mm. */
export interface Notch {
  readonly width: number;
  readonly depth: number;
  /** From the lid's front end to its steep side, and the length of its slope from there. */
  readonly fromEnd: number;
  readonly run: number;
}

/** How a sliding lid runs; mm. */
export interface LidRun {
  readonly length: number;
  readonly width: number;
  /** Thickness in the groove, and how much thinner that is than the groove. */
  readonly tongue: number;
  readonly slip: number;
  /** Length of lid in the side grooves when closed. */
  readonly guided: number;
  /** Play across today and on the driest day; hold at the worse side on the driest day. */
  readonly playToday: number;
  readonly playAtDriest: number | undefined;
  readonly engagement: number | undefined;
  readonly notch: Notch | undefined;
}

/** Two hinges on the back of a sawn box; mm. */
export interface Hinges {
  /** The long side, or the back where that is longer. */
  readonly wall: WallName;
  readonly length: number;
  /** Where each lies along the wall, from either end: one hinge length in. */
  readonly places: readonly (readonly [from: number, to: number])[];
}

/** The notch of a sliding lid; `undefined` for another pull, or where the lid is too thin for one. */
export function notchOf({ values, lidThickness, length, width, wall }: Plan): Notch | undefined {
  const depth = Math.min(practice.notchDepth, lidThickness - practice.notchFloor);
  const fits =
    depth >= leastNotch - 1e-9 && length >= shortestNotched && width - 2 * wall >= 2 * practice.notchWidth;
  if (values.kind !== 'sliding' || values.pull !== 'notch' || !fits) return undefined;
  return { width: practice.notchWidth, depth, fromEnd: practice.notchFromEnd, run: practice.notchRun };
}

/** The notch as a cut: steep toward the front, where the thumb pushes. */
export function notchCut({ lidUnder, lidThickness, width }: Plan, notch: Notch): Prism {
  const top = lidUnder + lidThickness;
  return {
    axis: 'y',
    from: (width - notch.width) / 2,
    to: (width + notch.width) / 2,
    outline: [
      [notch.fromEnd, top],
      [notch.fromEnd, top - notch.depth],
      [notch.fromEnd + notch.run, top],
    ],
  };
}

/** How the lid runs. */
export const lidRun = (plan: Plan, panel: FittedPanel): LidRun => ({
  length: panel.length,
  width: panel.width,
  tongue: panel.tongue,
  slip: practice.lidSlip,
  guided: panel.length,
  playToday: panel.playToday,
  playAtDriest: panel.playAtDriest,
  engagement: panel.engagementCrept,
  notch: notchOf(plan),
});

/** A strip glued across the lid's front end; it fills the height up to the top edges. */
export function pullPart(plan: Plan, panel: FittedPanel): Part | undefined {
  const { values, wall, width, height, lidUnder, lidThickness } = plan;
  const thickness = Math.max(0, values.pullThickness);
  if (values.kind !== 'sliding' || values.pull !== 'glued') return undefined;
  const low = lidUnder + lidThickness;
  // As much room beside it as the lid has, so that it never holds the lid.
  const side = wall + panel.gapAcross;
  const finished = { length: width - 2 * side, width: height - low, thickness };
  if (!(finished.length > 0 && finished.width > 0 && thickness > 0 && lidThickness > 0)) return undefined;
  return {
    name: 'pull',
    label: 'pull',
    count: 1,
    material: 'solid',
    grain: 'y',
    finished,
    // It goes in between the sides, with the lid.
    round: 'down',
    rough: roughSize(finished, values.planing),
    pieces: [
      { block: { x: [0, thickness], y: [side, width - side], z: [low, height] }, cuts: [], opens: true },
    ],
    volume: finished.length * finished.width * finished.thickness,
    note: 'Glued across the lid’s front end; its grain crosses the lid’s.',
  };
}

/** A finger hole through the lid, near its front end: a circle as a polygon of the same area. */
export function holeCut({ values, lidUnder, lidThickness, length, width, wall }: Plan): Prism | undefined {
  if (values.kind !== 'sliding' || values.pull !== 'hole' || !holeFits(length, width - 2 * wall))
    return undefined;
  const corners = 24;
  const angle = (2 * Math.PI) / corners;
  const radius = (practice.fingerHole / 2) * Math.sqrt(angle / Math.sin(angle));
  return {
    axis: 'z',
    from: lidUnder,
    to: lidUnder + lidThickness,
    outline: Array.from({ length: corners }, (_, corner) => [
      practice.holeFromEnd + radius * Math.cos(corner * angle),
      width / 2 + radius * Math.sin(corner * angle),
    ]),
  };
}

/** Hinges of a sawn lid, on the longer wall: the right side, or the back; `undefined` where two do not fit. */
export function hingesOf({ values, length, width }: Plan): Hinges | undefined {
  const run = Math.max(length, width);
  const leaf = values.hingeLength;
  if (values.kind !== 'sawn' || !(leaf > 0 && run >= 4 * leaf - 1e-6)) return undefined;
  return {
    wall: length >= width ? 'right' : 'back',
    length: leaf,
    places: [
      [leaf, 2 * leaf],
      [run - 2 * leaf, run - leaf],
    ],
  };
}
