/** Joints and grooves, and the front of a sliding-lid box. */
import type { Solid } from '../../../geometry/solid.ts';
import type { CutFor, WallName } from '../../design/part.ts';
import { groovesOnStrip, type Planned } from '../step.ts';
import { blockOf, partOf, partsOf, type Scene, type Thing, thingsOf, withBlock } from './scene.ts';
import { allWalls, apartBy, frameOf, frontUncut } from './walls.ts';

/** Grooves that are not there yet, as long as the joints are cut first. */
const later = (design: Planned): readonly CutFor[] =>
  groovesOnStrip(design) ? ['key'] : ['groove', 'stopped groove', 'key'];

/** Two scraps with the joint, about to be put together. */
export function jointTest(design: Planned): Scene {
  const { wall, height } = design.plan;
  const stub = (wallName: 'left' | 'front'): Thing[] =>
    thingsOf(design, partOf(design, wallName), {
      without: ['groove', 'stopped groove'],
      marked: { cuts: ['joint'] },
    }).map((thing) => ({ ...thing, solid: short(thing.solid, wallName === 'left' ? 'x' : 'y', 5 * wall) }));
  const short = (solid: Solid, axis: 'x' | 'y', long: number) =>
    withBlock(solid, { [axis]: [solid.block[axis][0], solid.block[axis][0] + long], z: [0, height] });
  return {
    shows: 'Two scraps with the joint, about to be put together.',
    things: [
      ...stub('left'),
      ...stub('front').map((thing) => ({ ...thing, at: [-2.5 * wall, 0, 0] as const })),
    ],
  };
}

/** All walls apart, what the joint takes away marked. A front is still as high as the other walls where it is ripped last. */
export function joint(design: Planned): Scene {
  const { box } = design;
  const shown = {
    apart: apartBy(design),
    without: later(design),
    marked: () => ({ cuts: [box.joint === 'splined-mitre' ? 'spline' : 'joint'] as const }),
  };
  const isTall = box.kind === 'sliding' && box.joint !== 'dovetail';
  const front = frameOf(design, 'box', { ...shown, only: ['front'] });
  return {
    shows: 'The walls apart, their joints marked.',
    things: [
      ...allWalls(design, { ...shown, only: ['back', 'left', 'right'] }),
      ...(isTall ? frontUncut(design, front) : front),
      ...frameOf(design, 'lid', { ...shown, only: ['front'] }),
    ],
  };
}

export function splines(design: Planned): Scene {
  const { height } = design.plan;
  return {
    shows: 'The walls together, the splines above their grooves.',
    things: [
      ...frameOf(design, 'box', { without: ['stopped groove'] }),
      ...partsOf(design, 'splines')
        .slice(0, 1)
        .flatMap((part) => thingsOf(design, part, { at: [0, 0, 0.8 * height], marked: 'all' })),
    ],
  };
}

/** Two walls that meet, seen from inside: those in which most of these grooves lie. */
function insides(design: Planned, which: CutFor, shows: string): Scene {
  const pairs: readonly (readonly [WallName, WallName])[] = [
    ['back', 'right'],
    ['front', 'left'],
  ];
  const shown = {
    apart: apartBy(design) / 3,
    without: which === 'groove' ? (['stopped groove', 'key'] as const) : (['key'] as const),
    marked: () => ({ cuts: [which] }),
  };
  const [best] = pairs
    .map((only, index) => {
      const things = allWalls(design, { ...shown, only });
      const count = things.flatMap(({ solid }) => solid.cuts.filter(({ cutFor }) => cutFor === which)).length;
      return { things, count, turn: index * 180 };
    })
    .sort((a, b) => b.count - a.count);
  return { shows, things: best!.things, turn: best!.turn };
}

export const grooves = (design: Planned): Scene =>
  insides(design, 'groove', 'Two walls from inside, their through grooves marked.');
export const stoppedGrooves = (design: Planned): Scene =>
  insides(design, 'stopped groove', 'Two walls from inside, their stopped grooves marked.');

export function front(design: Planned): Scene {
  const { frontTop, height, wall } = design.plan;
  const things = frameOf(design, 'box', {
    only: ['front'],
    without: design.box.joint === 'dovetail' ? ['joint', 'groove', 'stopped groove'] : [],
    marked: () => ({ sides: ['z+'] }),
  });
  const [from, to] = things[0]?.solid.block.y ?? [0, 0];
  return {
    shows: 'The front, what is ripped off its upper edge drawn above it.',
    things: [
      ...things,
      {
        solid: blockOf(wall, to - from, height - frontTop),
        grain: 'y',
        at: [0, from, frontTop + 1.2 * wall],
        waste: true,
      },
    ],
  };
}
