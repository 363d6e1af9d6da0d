/** Walls of the box, and of a lift-off lid above it, standing apart or as a frame. */
import type { Vector } from '../../../geometry/convex.ts';
import { type CutFor, outward, type PartName, type WallName, wallNames } from '../../design/part.ts';
import type { Planned } from '../step.ts';
import { type Marked, partOf, type Side, type Thing, thingsOf, withBlock } from './scene.ts';

/** How far parts stand apart, mm: in proportion to the box. */
export const apartBy = ({ plan: { length, width, wall } }: Planned): number =>
  0.15 * Math.min(length, width) + 1.5 * wall;

/** Which side of a wall is its inside, its outside. */
export const inner: Readonly<Record<WallName, Side>> = { front: 'x+', back: 'x-', left: 'y+', right: 'y-' };
export const outer: Readonly<Record<WallName, Side>> = { front: 'x-', back: 'x+', left: 'y-', right: 'y+' };

interface WallsShown {
  /** How far each has been moved out, mm. */
  readonly apart?: number;
  readonly without?: readonly CutFor[];
  readonly marked?: (wall: WallName) => Marked | undefined;
  readonly only?: readonly WallName[];
}

/** The walls of a frame; those of a lift-off lid stand above the box, clear of it. */
export function frameOf(design: Planned, of: 'box' | 'lid', shown: WallsShown): Thing[] {
  const { apart = 0, without = [], marked = () => undefined, only = wallNames } = shown;
  const up = of === 'lid' ? 0.7 * design.plan.height : 0;
  return only.flatMap((wall) => {
    const way = outward[wall];
    const at: Vector = [way[0] * apart, way[1] * apart, up];
    const name: PartName = of === 'lid' ? `lid-${wall}` : wall;
    return thingsOf(design, partOf(design, name), { at, without, marked: marked(wall) });
  });
}

export const allWalls = (design: Planned, shown: WallsShown): Thing[] => [
  ...frameOf(design, 'box', shown),
  ...frameOf(design, 'lid', shown),
];

/** The front before it is ripped to its height: as high as the other walls. */
export const frontUncut = ({ plan: { height } }: Planned, things: readonly Thing[]): Thing[] =>
  things.map((thing) => ({ ...thing, solid: withBlock(thing.solid, { z: [0, height] }) }));
