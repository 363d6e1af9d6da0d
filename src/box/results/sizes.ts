/** Inside and outside sizes, whichever of them the reader gave. */
import * as sizes from '../../calc/sizes.ts';
import type { Box } from '../box.ts';
import type { AnyRelation, Choice, ResultTable } from '../result.ts';

export interface SizeResults {
  /** All in mm. */
  readonly insideLength: number;
  readonly insideWidth: number;
  readonly insideHeight: number;
  readonly outsideLength: number;
  readonly outsideWidth: number;
  readonly outsideHeight: number;
}

type Values = Box & SizeResults;

/** The relation that fits the size the reader gave; contents with lining or dividers take the longer sum. */
const bySizeFrom = (
  from: Record<Box['sizeFrom'], AnyRelation> & { fitted: AnyRelation },
  isFitted: (v: Values) => boolean,
): Choice<Values> => ({
  among: Object.values(from),
  choose: (v) => (v.sizeFrom === 'contents' && isFitted(v) ? from.fitted : from[v.sizeFrom]),
});

/** One horizontal inside size: the inputs it comes from, along the length or along the width. */
const inside = (
  label: string,
  contents: 'contentsLength' | 'contentsWidth',
  wanted: 'wantedLength' | 'wantedWidth',
  dividers: 'dividersAcross' | 'dividersAlong',
  fingers: (v: Values) => number,
) =>
  ({
    label,
    kind: 'length',
    relation: bySizeFrom(
      {
        contents: sizes.roomAround,
        fitted: sizes.roomForFittings,
        inside: sizes.asGiven,
        outside: sizes.insideFromOutside,
      },
      (v) => v.lining + v[dividers] + fingers(v) > 0,
    ),
    given: (v: Values) => ({
      c: v[contents],
      r: v.clearance,
      p: fingers(v),
      f: v.lining,
      n: v[dividers],
      d: v.dividerThickness,
      s: sizes.dividerSlip,
      x: v[wanted],
      L: v[wanted],
      t: v.wall,
    }),
  }) as const;

const stack = (v: Values) => ({ m_b: v.bottomLip, b: v.bottomTongue, d: v.lidThickness, m_d: v.lidLip });

export const sizeResults: ResultTable<keyof SizeResults, Values> = {
  insideLength: inside(
    'inside length',
    'contentsLength',
    'wantedLength',
    'dividersAcross',
    (v) => v.fingerRoom,
  ),
  insideWidth: inside('inside width', 'contentsWidth', 'wantedWidth', 'dividersAlong', () => 0),
  insideHeight: {
    label: 'inside height',
    kind: 'length',
    relation: bySizeFrom(
      {
        contents: sizes.roomAbove,
        fitted: sizes.roomAboveLining,
        inside: sizes.asGiven,
        outside: sizes.insideHeight,
      },
      (v) => v.lining > 0,
    ),
    given: (v) => ({
      c: v.contentsHeight,
      r: v.headroom,
      f: v.lining,
      x: v.wantedHeight,
      H: v.wantedHeight,
      ...stack(v),
    }),
  },
  outsideLength: {
    label: 'outside length',
    kind: 'length',
    relation: sizes.outsideFromInside,
    given: (v) => ({ l: v.insideLength, t: v.wall }),
  },
  outsideWidth: {
    label: 'outside width',
    kind: 'length',
    relation: sizes.outsideFromInside,
    given: (v) => ({ l: v.insideWidth, t: v.wall }),
  },
  outsideHeight: {
    label: 'outside height',
    kind: 'length',
    relation: sizes.heightStack,
    given: (v) => ({ h: v.insideHeight, ...stack(v) }),
  },
};
