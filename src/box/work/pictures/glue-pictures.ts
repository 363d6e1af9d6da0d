/** Dry fit and glue, and the keys that come after it. */
import type { Vector } from '../../../geometry/convex.ts';
import { outward, wallNames } from '../../design/part.ts';
import type { Planned } from '../step.ts';
import { asGlued, blockOf, type Line, partOf, partsOf, type Scene, type Thing, thingsOf } from './scene.ts';
import { allWalls, apartBy, frameOf, inner } from './walls.ts';

const panels = (design: Planned): Thing[] => thingsOf(design, partOf(design, 'bottom'));

/** The lid's panel in its frame: over the box, or in the lid that stands above it. */
const lidPanel = (design: Planned, clear = 0): Thing[] => {
  const { kind } = design.box;
  if (kind === 'sliding') return [];
  const up = kind === 'lift-off' ? 0.7 * design.plan.height : clear;
  return thingsOf(design, partOf(design, 'lid'), { at: [0, 0, up] });
};

export const inside = (design: Planned): Scene => ({
  shows: 'The walls apart, their insides marked.',
  things: allWalls(design, {
    apart: apartBy(design),
    without: ['key'],
    marked: (wall) => ({ sides: [inner[wall]] }),
  }),
});

export function dryFit(design: Planned): Scene {
  const { length, width, rim } = design.plan;
  const apart = apartBy(design);
  const middle: Readonly<Record<string, Vector>> = {
    front: [0, width / 2, rim / 2],
    back: [length, width / 2, rim / 2],
    left: [length / 2, 0, rim / 2],
    right: [length / 2, width, rim / 2],
  };
  const ways = wallNames.map((wall): Line => {
    const [x, y, z] = middle[wall]!;
    const [dx, dy] = outward[wall];
    return {
      is: 'to come',
      points: [
        [x, y, z],
        [x + dx * apart, y + dy * apart, z],
      ],
    };
  });
  return {
    shows: 'The walls on their way together round the bottom, their joints marked.',
    things: [
      ...allWalls(design, { apart, without: ['key'], marked: () => ({ cuts: ['joint', 'spline'] }) }),
      ...panels(design),
      ...lidPanel(design, design.plan.height),
    ],
    lines: ways,
  };
}

/** From inner corner to inner corner over the upper edges. */
export function glue(design: Planned): Scene {
  const { length, width, wall, height, sawn } = design.plan;
  const { kind } = design.box;
  const up = kind === 'lift-off' ? 1.7 * height : height + sawn;
  const [near, far] = [wall, length - wall];
  return {
    shows: 'The box in the clamps, its two diagonals marked.',
    things: [...allWalls(design, { without: ['key'] }), ...panels(design), ...lidPanel(design)],
    lines: [
      {
        is: 'mark',
        points: [
          [near, wall, up],
          [far, width - wall, up],
        ],
      },
      {
        is: 'mark',
        points: [
          [near, width - wall, up],
          [far, wall, up],
        ],
      },
    ],
  };
}

export function keyStrip(design: Planned): Scene {
  const part = partsOf(design, 'keys')[0]!;
  const { length, width, thickness } = part.finished;
  const [key] = part.pieces;
  const { x, y, z } = key!.block;
  return {
    shows: 'A strip for the keys, and a key sawn off its end.',
    things: [
      { solid: blockOf(4 * length, width, thickness), grain: 'x', at: [2 * width, 0, 0] },
      { solid: key!, grain: part.grain, at: [-x[0], -y[0], -z[0]], marked: 'all' },
    ],
  };
}

export function keys(design: Planned): Scene {
  const { length, width } = design.plan;
  const out = 0.6 * apartBy(design);
  return {
    shows: 'The box glued up, its keys beside their slots.',
    things: [
      ...frameOf(design, 'box', { marked: () => ({ cuts: ['key'] }) }),
      ...partsOf(design, 'keys').flatMap((part) =>
        asGlued(design, part)
          .filter(({ block }) => block.z[1] <= (design.box.kind === 'lift-off' ? design.plan.rim : Infinity))
          .map((solid): Thing => {
            const { x, y } = solid.block;
            const at: Vector = [x[0] > length / 2 ? out : -out, y[0] > width / 2 ? out : -out, 0];
            return { solid, grain: part.grain, at, marked: 'all' };
          }),
      ),
      ...panels(design),
    ],
  };
}
