/** The ends of the walls, square or mitered, and the test of a miter. */
import { mirrored, type Prism, type Solid } from '../../../geometry/solid.ts';
import { cutFor, wallNames } from '../../design/part.ts';
import { isMitered } from '../../subjects/joints/corners.ts';
import type { Planned } from '../step.ts';
import { blockOf, partOf, type Scene, type Thing } from './scene.ts';
import { stripHeight } from './strip-pictures.ts';

/** A miter at the low end of a piece along x, its outside at y = 0. */
const miter = (wall: number, up: number): Prism => ({
  axis: 'z',
  from: 0,
  to: up,
  outline: [
    [0, 0],
    [wall, wall],
    [0, wall],
  ],
});

/** All four walls side by side, the end that is cut now marked and what falls off beside it. */
function side(design: Planned, end: 'first' | 'second'): Scene {
  const { wall } = design.plan;
  const up = stripHeight(design);
  const isMiter = isMitered(design.box);
  const things = wallNames.flatMap((name, row): Thing[] => {
    const long = partOf(design, name)?.finished.length ?? 0;
    const y = row * 3 * wall;
    const first = isMiter ? [miter(wall, up)] : [];
    const last = first.map((cut) => mirrored(cut, 'x', long));
    const cuts = end === 'first' ? cutFor('joint', first) : [...first, ...cutFor('joint', last)];
    return [
      {
        solid: { ...blockOf(long, wall, up), cuts },
        grain: 'x',
        at: [0, y, 0],
        marked: isMiter ? { cuts: ['joint'] } : { sides: [end === 'first' ? 'x-' : 'x+'] },
      },
      {
        solid: blockOf(wall, wall, up),
        grain: 'x',
        at: [end === 'first' ? -2.5 * wall : long + 1.5 * wall, y, 0],
        waste: true,
      },
    ];
  });
  // The second ends are seen from the other side.
  return {
    shows: `The four walls side by side, the ${end} end of each marked.`,
    things,
    turn: end === 'second' ? 90 : 0,
  };
}

export const firstEnds = (design: Planned): Scene => side(design, 'first');
export const secondEnds = (design: Planned): Scene => side(design, 'second');

/** A frame of four scraps, as wide as the walls are high; the last one is about to close it. */
export function miterTest(design: Planned): Scene {
  const { wall } = design.plan;
  const up = stripHeight(design);
  const long = Math.max(10 * wall, 1.5 * up);
  const left: Solid = {
    block: blockOf(long, wall, up).block,
    cuts: cutFor('joint', [miter(wall, up), mirrored(miter(wall, up), 'x', long)]),
  };
  const atEnd = (cut: Prism): Prism => ({ ...cut, outline: cut.outline.map(([x, y]) => [y, x] as const) });
  const front: Solid = { block: blockOf(wall, long, up).block, cuts: left.cuts.map(atEnd) };
  const opposite = ({ block, cuts }: Solid, axis: 'x' | 'y'): Solid => ({
    block: { ...block, [axis]: [long - wall, long] },
    cuts: cuts.map((cut) => mirrored(cut, axis, long)),
  });
  return {
    shows: 'Four mitered scraps, the last one about to close the frame.',
    things: [
      { solid: left, grain: 'x' },
      { solid: front, grain: 'y' },
      { solid: opposite(left, 'y'), grain: 'x' },
      { solid: opposite(front, 'x'), grain: 'y', at: [2 * wall, 0, 0], marked: { cuts: ['joint'] } },
    ],
    tip: 15,
    turn: 180,
  };
}
