/** The liner of a lift-off lid: four mitered strips that line the box and stand up into the lid. */

import { type Block, mirrored, type Prism, slot } from '../../geometry/solid.ts';
import { volumeOf } from '../../geometry/volume.ts';
import { roughSize } from './allowance.ts';
import { cutFor, type Part, type WallName } from './part.ts';
import type { Plan } from './plan.ts';

/** The liner of a lift-off lid: mitered, from the floor to above the rim, thinner there by the room around it. */
export function linerParts(plan: Plan): Part[] {
  const { values, wall, length, width, floor, rim } = plan;
  const { linerThickness: thickness, linerRise, planing } = values;
  const inside = { x: length - 2 * wall, y: width - 2 * wall };
  const height = rim + linerRise - floor;
  const fits = thickness > 0 && height > 0 && inside.x > 2 * thickness && inside.y > 2 * thickness;
  if (values.kind !== 'lift-off' || !fits) return [];
  const room = Math.min(Math.max(0, values.lidRoom), thickness);
  const z: readonly [number, number] = [floor, floor + height];
  const inner = wall + thickness;
  const frontBlock: Block = { x: [wall, inner], y: [wall, width - wall], z };
  const leftBlock: Block = { x: [wall, length - wall], y: [wall, inner], z };
  const miter = (corner: readonly [number, number]): Prism => ({
    axis: 'z',
    from: z[0],
    to: z[1],
    outline: [[wall, wall], corner, [inner, inner]],
  });
  const above: readonly [number, number] = [Math.min(rim, z[1]), z[1]];
  const cutsOf = (corner: readonly [number, number], lap: Prism) => [
    ...cutFor('joint', [miter(corner)]),
    ...cutFor('lap', [lap]),
  ];
  const frontCuts = cutsOf([inner, wall], slot({ ...frontBlock, x: [wall, wall + room], z: above }));
  const leftCuts = cutsOf([wall, inner], slot({ ...leftBlock, y: [wall, wall + room], z: above }));
  const both = (cuts: Prism[], axis: 'x' | 'y', size: number) => [
    cuts[0]!,
    mirrored(cuts[0]!, axis, size),
    cuts[1]!,
  ];
  const front = { block: frontBlock, cuts: both(frontCuts, 'y', width) };
  const left = { block: leftBlock, cuts: both(leftCuts, 'x', length) };
  const part = (at: WallName, block: Block, cuts: readonly Prism[]): Part => {
    const side = at === 'left' || at === 'right';
    const finished = { length: side ? inside.x : inside.y, width: height, thickness };
    return {
      name: `liner-${at}`,
      label: `liner, ${at}`,
      count: 1,
      material: 'solid',
      grain: side ? 'x' : 'y',
      finished,
      round: 'nearest',
      rough: roughSize(finished, planing),
      pieces: [{ block, cuts, opens: false }],
      volume: volumeOf({ block, cuts }),
      note: 'Mitered at both ends; planed thinner above the rim so that the lid slips over it.',
    };
  };
  return [
    part('front', front.block, front.cuts),
    part(
      'back',
      { ...front.block, x: [length - inner, length - wall] },
      front.cuts.map((cut) => mirrored(cut, 'x', length)),
    ),
    part('left', left.block, left.cuts),
    part(
      'right',
      { ...left.block, y: [width - inner, width - wall] },
      left.cuts.map((cut) => mirrored(cut, 'y', width)),
    ),
  ];
}
