/**
 * What the picture of a step shows, as data: solids of the model in their places, which of their faces this step makes or
 * looks at, and lines to mark or to measure. `figures/views/steps` draws it. All lengths mm, axes as in `geometry/solid.ts`.
 */
import type { Vector } from '../../../geometry/convex.ts';
import { type Block, type Prism, raised, type Solid } from '../../../geometry/solid.ts';
import type { CutFor, Part, PartName } from '../../design/part.ts';
import type { Planned } from '../step.ts';

/** A side of a block by the way it looks. */
export type Side = 'x-' | 'x+' | 'y-' | 'y+' | 'z-' | 'z+';

/** Faces that are marked: all of a thing, what some cuts left, or some sides of its block. */
export type Marked = 'all' | { readonly cuts?: readonly CutFor[]; readonly sides?: readonly Side[] };

export interface Thing {
  readonly solid: Solid;
  readonly grain: Part['grain'];
  /** Moved along. */
  readonly at?: Vector | undefined;
  readonly marked?: Marked | undefined;
  /** Lies on its upper face. */
  readonly upsideDown?: true;
  /** Wood that comes off in this step. */
  readonly waste?: true;
}

/** Whether a face of a thing is marked. */
export function isMarked({ marked }: Thing, normal: Vector, cut: Prism | undefined): boolean {
  if (marked === undefined || marked === 'all') return marked === 'all';
  if (cut) return marked.cuts?.some((one) => one === cut.cutFor) ?? false;
  return marked.sides?.some((side) => looksTo(side, normal)) ?? false;
}

const looksTo = (side: Side, normal: Vector) =>
  normal['xyz'.indexOf(side[0]!)]! * (side[1] === '-' ? -1 : 1) > 0.99;

export interface Line {
  readonly points: readonly Vector[];
  /** Where a saw will run or a part will go; what is measured or drawn on the wood. */
  readonly is: 'to come' | 'mark';
}

export interface Scene {
  /** For those who do not see it: what lies there, and what is marked. */
  readonly shows: string;
  readonly things: readonly Thing[];
  readonly lines?: readonly Line[];
  /** Words at places; left out where a part is too short for them. */
  readonly words?: readonly { readonly at: Vector; readonly says: string; readonly room: number }[];
  /** Degrees from the usual view, as on the bench. */
  readonly turn?: number;
  readonly tip?: number;
}

/** A scene, or the dial of a hygrometer with the humidity it should read, %. */
export type Picture = (design: Planned) => Scene | { readonly dial: number };

/** A rectangular block of wood. */
export const blockOf = (x: number, y: number, z: number): Solid => ({
  block: { x: [0, x], y: [0, y], z: [0, z] },
  cuts: [],
});

/** A solid with another block, its cuts kept: longer, higher or thicker than the model's. */
export const withBlock = ({ block, cuts }: Solid, changes: Partial<Block>): Solid => ({
  block: { ...block, ...changes },
  cuts,
});

/** A solid before some cuts are made. */
const before = ({ block, cuts }: Solid, made: readonly CutFor[]): Solid => ({
  block,
  cuts: cuts.filter(({ cutFor }) => !made.some((one) => one === cutFor)),
});

export const partOf = ({ parts }: Planned, name: PartName): Part | undefined =>
  parts.find((part) => part.name === name);

/** All parts with a name that begins so. */
export const partsOf = ({ parts }: Planned, start: 'lid-' | 'liner-' | 'keys' | 'splines'): readonly Part[] =>
  parts.filter(({ name }) => name.startsWith(start));

/** The solids of a part as the box is glued up: a wall whose lid is sawn off later is one, and what lies above the kerf lies higher. */
export const asGlued = ({ plan }: Planned, { whole, pieces }: Part): readonly Solid[] =>
  whole ? [whole] : pieces.map((piece) => (piece.opens && plan.sawn > 0 ? lifted(piece, plan.sawn) : piece));

const lifted = ({ block, cuts }: Solid, by: number): Solid => ({
  block: { ...block, z: [block.z[0] + by, block.z[1] + by] },
  cuts: cuts.map((cut) => raised(cut, by)),
});

interface Shown {
  readonly at?: Vector | undefined;
  readonly marked?: Marked | undefined;
  readonly without?: readonly CutFor[];
}

/** A part as things to draw. */
export const thingsOf = (design: Planned, part: Part | undefined, shown: Shown = {}): Thing[] =>
  part
    ? asGlued(design, part).map((solid) => ({
        solid: before(solid, shown.without ?? []),
        grain: part.grain,
        at: shown.at,
        marked: shown.marked,
      }))
    : [];
