/**
 * What one pane of the glass on the bench shows: the wood that a cut meets near the chosen part, and the numbers that
 * belong there. All places in mm on the sheet, right and down.
 */
import type { Design } from '../../../box/design/design.ts';
import type { Part } from '../../../box/design/part.ts';
import type { Plan } from '../../../box/design/plan.ts';
import { type Body, clip, type Polygon, type Vector } from '../../../geometry/convex.ts';
import { sectionOf } from '../../../geometry/faces.ts';
import { onSheet, type View } from '../../../geometry/view.ts';
import type { Cut } from '../SectionPicture.tsx';

export type Place = readonly [x: number, y: number];

/** A number on the glass. */
export interface Measure {
  /** The measured ends, level or upright. */
  readonly from: Place;
  readonly to: Place;
  /** On which side of them the line runs, px away; negative is left or up. */
  readonly away: number;
  readonly value: number;
  readonly before?: string;
  /** A small difference, in hundredths of a millimeter or thousandths of an inch. */
  readonly as?: 'exact';
  /** The number of an upright line stands left of it though the line runs right, or through the wood. */
  readonly numberLeft?: true;
}

export interface Pane {
  readonly caption: string;
  /** A number that belongs to no line. */
  readonly note?: { readonly before: string; readonly value: number };
  readonly cuts: readonly Cut[];
  /** Left, top, right and bottom of what is shown. */
  readonly window: readonly [left: number, top: number, right: number, bottom: number];
  readonly measures: readonly Measure[];
  /** What is not wood, or not there today: dashed. */
  readonly dashed?: readonly (readonly Place[])[];
  /** Edges of the part that is looked at. */
  readonly edges?: readonly (readonly Place[])[];
}

/** A design that has room between its walls. */
export type Planned = Design & { readonly plan: Plan };

type Window = Pane['window'];

const bodyOf = ([left, top, right, bottom]: Window): Body => [
  { n: [-1, 0, 0], d: -left },
  { n: [1, 0, 0], d: right },
  { n: [0, -1, 0], d: -top },
  { n: [0, 1, 0], d: bottom },
];

/** What of flat polygons lies in a window. */
export const within = (polygons: readonly Polygon[], window: Window): readonly Polygon[] =>
  polygons.flatMap((polygon) => clip(polygon, bodyOf(window)) ?? []);

/** Looking from the back toward the front: the left side at the left, the table at 0. */
const toFront: View = { right: [0, 1, 0], up: [0, 0, 1], into: [-1, 0, 0] };

/** The wood that a cut across the length meets in the middle of the box. */
export function cutAcross({ parts, values }: Design, window: Window): Cut[] {
  return parts.flatMap((part: Part) =>
    part.pieces.map((piece) => ({
      name: part,
      normal: toFront.into,
      polygons: within(
        sectionOf(piece, 'x', values.outsideLength / 2).map(({ points, drawn }) => ({
          points: points.map((point) => onSheet(toFront, point)),
          drawn,
        })),
        window,
      ),
    })),
  );
}

/** An outline through four places; heights up from the table. */
export const rectangle = (left: number, low: number, right: number, high: number): readonly Place[] => [
  [left, -high],
  [right, -high],
  [right, -low],
  [left, -low],
  [left, -high],
];

/** A rectangle on the sheet, with all its edges. */
export const flat = (left: number, top: number, right: number, bottom: number): Polygon => ({
  points: [
    [left, top, 0],
    [right, top, 0],
    [right, bottom, 0],
    [left, bottom, 0],
  ] as readonly Vector[],
  drawn: [true, true, true, true],
});
