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

/** The relation that fits the size the reader gave. */
const bySizeFrom = (from: Record<Box['sizeFrom'], AnyRelation>): Choice<Values> => ({
  among: Object.values(from),
  choose: (v) => from[v.sizeFrom],
});

/** One horizontal inside size; `contents` and `wanted` pick the inputs it comes from. */
const inside = (
  label: string,
  contents: 'contentsLength' | 'contentsWidth',
  wanted: 'wantedLength' | 'wantedWidth',
) =>
  ({
    label,
    kind: 'length',
    relation: bySizeFrom({
      contents: sizes.roomAround,
      inside: sizes.asGiven,
      outside: sizes.insideFromOutside,
    }),
    given: (v: Values) => ({ c: v[contents], r: v.clearance, x: v[wanted], L: v[wanted], t: v.wall }),
  }) as const;

const stack = (v: Values) => ({ m_b: v.bottomLip, b: v.bottomTongue, d: v.lidThickness, m_d: v.lidLip });

export const sizeResults: ResultTable<keyof SizeResults, Values> = {
  insideLength: inside('inside length', 'contentsLength', 'wantedLength'),
  insideWidth: inside('inside width', 'contentsWidth', 'wantedWidth'),
  insideHeight: {
    label: 'inside height',
    kind: 'length',
    relation: bySizeFrom({
      contents: sizes.roomAbove,
      inside: sizes.asGiven,
      outside: sizes.insideHeight,
    }),
    given: (v) => ({
      c: v.contentsHeight,
      r: v.headroom,
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
