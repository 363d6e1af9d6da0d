/** The strip that becomes the walls, before it is cut. */
import { type Prism, type Solid, slot } from '../../../geometry/solid.ts';
import { practice } from '../../core/practice.ts';
import { cutFor } from '../../design/part.ts';
import type { Planned } from '../step.ts';
import { blockOf, type Line, partOf, type Scene, type Thing } from './scene.ts';

/** Lengths of the walls along a strip, in the order in which they are marked. */
const order = ['front', 'right', 'back', 'left'] as const;
const lengthOf = (design: Planned, wall: (typeof order)[number]) =>
  partOf(design, wall)?.finished.length ?? 0;
/** Height to which the walls of the box are ripped, mm. */
export const stripHeight = ({ plan, box }: Planned) =>
  box.kind === 'lift-off' ? plan.rim : plan.height + plan.sawn;
/** Two walls' length of the strip, so that its section can be seen. */
const shortStrip = (design: Planned) => lengthOf(design, 'front') + lengthOf(design, 'right');

export function thickness(design: Planned): Scene {
  const { wall } = design.plan;
  const [long, up] = [shortStrip(design), stripHeight(design) + practice.extraWidth];
  const off = Math.max(0.3, design.box.planing);
  const shaving = (y: number): Thing => ({
    solid: blockOf(long, off, up),
    grain: 'x',
    at: [0, y, 0],
    waste: true,
  });
  return {
    shows: 'The strip for the walls, what is planed off both faces drawn beside it.',
    things: [
      shaving(-off - 2 * wall),
      { solid: blockOf(long, wall, up), grain: 'x', marked: { sides: ['y-', 'y+'] } },
      shaving(3 * wall),
    ],
  };
}

/** Names along one strip, and a triangle over all of it. */
function marked(
  design: Planned,
  walls: readonly (typeof order)[number][],
  up: number,
): Required<Pick<Scene, 'things' | 'lines' | 'words'>> {
  const [y, h] = [0, stripHeight(design)];
  const ends = [0];
  for (const wall of walls) ends.push(ends.at(-1)! + lengthOf(design, wall));
  const long = ends.at(-1)!;
  const cuts = ends.slice(1, -1).map(
    (x): Line => ({
      is: 'to come',
      points: [
        [x, y, up],
        [x, y, up + h],
      ],
    }),
  );
  const triangle: Line = {
    is: 'mark',
    points: [
      [0.12 * long, y, up + 0.15 * h],
      [0.5 * long, y, up + 0.9 * h],
      [0.88 * long, y, up + 0.15 * h],
      [0.12 * long, y, up + 0.15 * h],
    ],
  };
  return {
    things: [{ solid: blockOf(long, design.plan.wall, h), grain: 'x', at: [0, 0, up] }],
    lines: [...cuts, triangle],
    words: walls.map((wall, index) => ({
      at: [(ends[index]! + ends[index + 1]!) / 2, y, up + h],
      says: wall === 'left' || wall === 'right' ? 'side' : wall,
      room: lengthOf(design, wall),
    })),
  };
}

export function marks(design: Planned): Scene {
  const pair = design.box.wallsFrom === 'bookmatched';
  const runs = pair
    ? ([
        ['front', 'right'],
        ['back', 'left'],
      ] as const)
    : [order];
  const strips = runs.map((walls, index) => marked(design, walls, index * 2.2 * stripHeight(design)));
  return {
    shows: 'The strip with its cuts marked, and a triangle across all walls.',
    things: strips.flatMap(({ things }) => things),
    lines: strips.flatMap(({ lines }) => lines),
    words: strips.flatMap(({ words }) => words),
    turn: 45,
    tip: -15,
  };
}

export function height(design: Planned): Scene {
  const { wall } = design.plan;
  const [long, up] = [shortStrip(design), stripHeight(design)];
  return {
    shows: 'The strip for the walls, what is ripped off its upper edge drawn above it.',
    things: [
      { solid: blockOf(long, wall, up), grain: 'x', marked: { sides: ['z+'] } },
      {
        solid: blockOf(long, wall, practice.extraWidth),
        grain: 'x',
        at: [0, 0, up + 1.2 * wall],
        waste: true,
      },
    ],
  };
}

/** Grooves along the whole strip, the inside turned to the eye; a lift-off lid has a strip of its own, above. */
export function stripGrooves(design: Planned): Scene {
  const { plan, box } = design;
  const { wall, bottomBand, lidBand, rim, sawn } = plan;
  const isTwo = box.kind === 'lift-off';
  const long = shortStrip(design);
  const strip = (up: number, bands: readonly { low: number; high: number; depth: number }[]): Solid => ({
    block: { x: [0, long], y: [0, wall], z: [0, up] },
    cuts: cutFor(
      'groove',
      bands
        .filter(({ depth }) => depth > 0)
        .map(({ low, high: top, depth }): Prism => slot({ x: [0, long], y: [0, depth], z: [low, top] })),
    ),
  });
  const raisedBy = (by: number) => ({ ...lidBand, low: lidBand.low + by, high: lidBand.high + by });
  const solids = isTwo
    ? [strip(rim, [bottomBand]), strip(plan.height - rim, [raisedBy(-rim)])]
    : [strip(stripHeight(design), [bottomBand, raisedBy(sawn)])];
  return {
    shows: 'The strip for the walls, its inside with the grooves marked.',
    things: solids.map((solid, index) => ({
      solid,
      grain: 'x',
      at: [0, 0, index * 1.6 * rim],
      marked: { cuts: ['groove'] },
    })),
  };
}
