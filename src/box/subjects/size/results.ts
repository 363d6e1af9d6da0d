/** Inside and outside sizes, whichever of them the reader gave. */

import { work } from '../../../calc/core/working.ts';
import * as heights from '../../../calc/size/heights.ts';
import * as sizes from '../../../calc/size/sizes.ts';
import { choiceOf, type Result, type ResultTable, rowsOf } from '../../core/result.ts';
import type { Box } from '../inputs.ts';

export interface SizeResults {
  /** All in mm. From wall to wall, and from bottom to lid. */
  readonly insideLength: number;
  readonly insideWidth: number;
  readonly insideHeight: number;
  /** Within the liner of a lift-off lid; from wall to wall in other boxes. */
  readonly clearLength: number;
  readonly clearWidth: number;
  readonly outsideLength: number;
  readonly outsideWidth: number;
  readonly outsideHeight: number;
  /** Of the walls whose corners are joined together. */
  readonly jointedHeight: number;
}

export type SizeValues = Box & SizeResults;
type V = SizeValues;
const row = rowsOf<V>();
const choice = choiceOf<V>();

/** Thickness of the liner that stands along the walls: only a lift-off lid has one. */
export const linerOf = (v: Box): number => (v.kind === 'lift-off' ? v.linerThickness : 0);

/** One horizontal inside size, from the inputs along the length or along the width. */
const inside = (
  label: string,
  inputs: (v: V) => { contents: number; wanted: number; fingers: number; dividers: number },
): Result<V> =>
  choice(
    [sizes.roomAround, sizes.roomForFittings, sizes.asGiven, sizes.aroundLiner, sizes.insideFromOutside],
    (v) => {
      const { contents, wanted, fingers, dividers } = inputs(v);
      const liner = linerOf(v);
      if (v.sizeFrom === 'outside') return work(sizes.insideFromOutside, { L: wanted, t: v.wall });
      if (v.sizeFrom === 'inside')
        return liner > 0
          ? work(sizes.aroundLiner, { x: wanted, q: liner })
          : work(sizes.asGiven, { x: wanted });
      if (v.lining + dividers + fingers + liner <= 0)
        return work(sizes.roomAround, { c: contents, r: v.clearance });
      return work(sizes.roomForFittings, {
        c: contents,
        r: v.clearance,
        p: fingers,
        f: v.lining + liner,
        n: dividers,
        d: v.dividerThickness,
        s: sizes.dividerSlip,
      });
    },
    { label, kind: 'length', as: 'size', builds: true },
  );

const stack = (v: V) => ({ m_b: v.bottomLip, b: v.bottomTongue, d: v.lidThickness, m_d: v.lidLip });

export const sizeResults: ResultTable<keyof SizeResults, V> = {
  insideLength: inside('inside length, wall to wall', (v) => ({
    contents: v.contentsLength,
    wanted: v.wantedLength,
    fingers: v.fingerRoom,
    dividers: v.dividersAcross,
  })),
  insideWidth: inside('inside width, wall to wall', (v) => ({
    contents: v.contentsWidth,
    wanted: v.wantedWidth,
    fingers: 0,
    dividers: v.dividersAlong,
  })),
  insideHeight: choice(
    [heights.roomAbove, heights.roomAboveLining, sizes.asGiven, heights.insideHeight],
    (v) => {
      if (v.sizeFrom === 'outside') return work(heights.insideHeight, { H: v.wantedHeight, ...stack(v) });
      if (v.sizeFrom === 'inside') return work(sizes.asGiven, { x: v.wantedHeight });
      return v.lining > 0
        ? work(heights.roomAboveLining, { c: v.contentsHeight, r: v.headroom, f: v.lining })
        : work(heights.roomAbove, { c: v.contentsHeight, r: v.headroom });
    },
    { label: 'inside height', kind: 'length', as: 'size', builds: true },
  ),
  clearLength: row(sizes.withinLiner, (v) => ({ l: v.insideLength, q: linerOf(v) }), {
    label: 'clear inside length, within the liner',
    kind: 'length',
    as: 'size',
    builds: true,
    when: (v) => linerOf(v) > 0,
  }),
  clearWidth: row(sizes.withinLiner, (v) => ({ l: v.insideWidth, q: linerOf(v) }), {
    label: 'clear inside width, within the liner',
    kind: 'length',
    as: 'size',
    builds: true,
    when: (v) => linerOf(v) > 0,
  }),
  outsideLength: row(sizes.outsideFromInside, (v) => ({ l: v.insideLength, t: v.wall }), {
    label: 'outside length',
    kind: 'length',
    as: 'size',
    builds: true,
  }),
  outsideWidth: row(sizes.outsideFromInside, (v) => ({ l: v.insideWidth, t: v.wall }), {
    label: 'outside width',
    kind: 'length',
    as: 'size',
    builds: true,
  }),
  outsideHeight: row(heights.heightStack, (v) => ({ h: v.insideHeight, ...stack(v) }), {
    label: 'outside height',
    kind: 'length',
    as: 'size',
    builds: true,
  }),
  jointedHeight: row(
    heights.jointedHeight,
    (v) => ({
      H: v.outsideHeight,
      h: v.kind === 'lift-off' ? v.lidHeight : 0,
      k: v.kind === 'sawn' ? v.kerf : 0,
    }),
    {
      label: 'height of the walls as they are joined',
      kind: 'length',
      as: 'size',
      builds: true,
      when: (v) => v.kind !== 'sliding',
    },
  ),
};
