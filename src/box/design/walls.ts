/** The wall parts of a frame: blocks with the joint and the grooves cut away, in place. */

import { between, mirrored, type Prism, type Solid } from '../../geometry/solid.ts';
import { volumeOf } from '../../geometry/volume.ts';
import { roughSize } from './allowance.ts';
import type { Frame } from './frames.ts';
import { type CutGroove, isSide } from './grooves.ts';
import { joints } from './joints/index.ts';
import { cutFor, type Part, type Piece, type WallName, wallNames } from './part.ts';
import type { Plan } from './plan.ts';

const labels: Readonly<Record<WallName, string>> = {
  front: 'front',
  back: 'back',
  left: 'left side',
  right: 'right side',
};

/** The four walls of a frame. */
export function wallParts(plan: Plan, frame: Frame, grooves: readonly CutGroove[]): Part[] {
  const volumes = new Map<WallName, number>();
  return wallNames.map((wall) => {
    const own = grooves
      .filter(({ groove }) => groove.wall === wall)
      .flatMap(({ groove: { startOpen, stopOpen }, cut }) =>
        cutFor(startOpen && stopOpen ? 'groove' : 'stopped groove', [cut]),
      );
    const solid = wallSolid(plan, frame, wall, own);
    const { x, y, z } = solid.block;
    const run = isSide(wall) ? x : y;
    const placed = pieces(plan, frame, solid);
    // Opposite walls are mirror images, save front and back under a sliding lid.
    const twin =
      wall === 'right' ? 'left' : wall === 'back' && plan.values.kind !== 'sliding' ? 'front' : wall;
    const volume = volumes.get(twin) ?? placed.reduce((sum, piece) => sum + volumeOf(piece), 0);
    volumes.set(wall, volume);
    const finished = { length: run[1] - run[0], width: z[1] - z[0], thickness: plan.wall };
    return {
      name: frame.of === 'lid' ? (`lid-${wall}` as const) : wall,
      label: frame.of === 'lid' ? `lid, ${labels[wall]}` : labels[wall],
      count: 1,
      material: 'solid',
      grain: isSide(wall) ? 'x' : 'y',
      finished,
      round: 'nearest',
      // All walls of a frame are ripped to one height; the front of a sliding-lid box is lowered after its joint.
      rough: roughSize({ ...finished, width: Math.max(finished.width, frame.height) }, plan.values.planing),
      pieces: placed,
      ...(plan.values.kind === 'sawn' && { whole: solid }),
      volume,
      note: note(plan, wall),
    };
  });
}

function wallSolid(plan: Plan, frame: Frame, wall: WallName, grooves: readonly Prism[]): Solid {
  const { length, width, wall: thickness } = plan;
  const joint = joints[plan.values.joint];
  const { front, back } = frame.corners;
  const atBack = (cut: Prism) => mirrored(cut, 'x', length);
  const atRight = (cut: Prism) => mirrored(cut, 'y', width);
  if (isSide(wall)) {
    const cuts = cutFor('joint', [...joint.sideCuts(front, plan), ...joint.sideCuts(back, plan).map(atBack)]);
    const left = wall === 'left';
    return {
      block: {
        x: [0, length],
        y: left ? [0, thickness] : [width - thickness, width],
        z: [0, frame.height],
      },
      cuts: [...(left ? cuts : cuts.map(atRight)), ...grooves],
    };
  }
  const corner = wall === 'front' ? front : back;
  const inset = joint.inset(thickness);
  const one = cutFor('joint', joint.endCuts(corner, plan));
  const cuts = [...one, ...one.map(atRight)];
  return {
    block: {
      x: wall === 'front' ? [0, thickness] : [length - thickness, length],
      y: [inset, width - inset],
      z: [0, corner.endHeight],
    },
    cuts: [...(wall === 'front' ? cuts : cuts.map(atBack)), ...grooves],
  };
}

/** A wall in its place in the finished box: two pieces where the lid is sawn off. */
function pieces({ values, rim, sawn }: Plan, { of, low, height }: Frame, solid: Solid): Piece[] {
  if (values.kind !== 'sawn') return [{ ...between(solid, 0, height, low), opens: of === 'lid' }];
  return [
    { ...between(solid, 0, rim, 0), opens: false },
    { ...between(solid, rim + sawn, height, -sawn), opens: true },
  ];
}

function note({ values }: Plan, wall: WallName): string {
  if (values.kind === 'sawn')
    return 'One board with its part of the lid: the lid is sawn off the closed box.';
  if (values.kind === 'sliding' && wall === 'front')
    return 'Lower than the others: the lid runs out over it.';
  return '';
}
