/** Ratios of the current box, and what it would take to get the ratio the reader wants. */

import {
  insideRatio,
  lengthForInsideRatio,
  wallForInsideRatio,
} from '../../../calc/proportion/inside-ratio.ts';
import {
  heightOfShorter,
  heightShare,
  lengthFromRatio,
  longToShort,
  ratio,
  widthFromRatio,
} from '../../../calc/proportion/proportion.ts';
import { compartment } from '../../../calc/size/dividers.ts';
import { dividerSlip } from '../../../calc/size/sizes.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { Box } from '../inputs.ts';
import { linerOf, type SizeResults } from '../size/results.ts';

export interface ProportionResults {
  /** Outside and inside length to width; the inside NaN where the walls meet. */
  readonly outsideRatio: number;
  readonly insideRatio: number;
  /** Outside height to outside width. */
  readonly heightShare: number;
  /** The same two whichever side is called the length. */
  readonly longToShort: number;
  readonly heightOfShorter: number;
  /** Outside length, or width, that gives the outside the wanted ratio, the other side kept; mm. */
  readonly lengthForRatio: number;
  readonly widthForRatio: number;
  /** Outside length, or wall, that gives the inside the wanted ratio, the rest kept; mm. */
  readonly lengthForInside: number;
  readonly wallForInside: number;
  /** Clear length of one compartment, and clear width, between linings and dividers; mm. */
  readonly compartmentLength: number;
  readonly compartmentWidth: number;
}

export type ProportionValues = Box & SizeResults & ProportionResults;
type V = ProportionValues;

const row = rowsOf<V>();
/** What one side takes from the outside: the wall, and the liner of a lift-off lid. */
const lining = (v: V) => v.wall + linerOf(v);
const isDivided = (v: V) => v.dividersAcross + v.dividersAlong > 0;

const fittings = (v: V, dividers: number) => ({
  f: v.lining,
  n: dividers,
  d: v.dividerThickness,
  s: dividerSlip,
});

export const proportionResults: ResultTable<keyof ProportionResults, V> = {
  outsideRatio: row(ratio, (v) => ({ L: v.outsideLength, W: v.outsideWidth }), {
    label: 'outside length to width',
    kind: 'ratio',
    digits: 2,
    rule: 'simple-ratio',
  }),
  insideRatio: row(insideRatio, (v) => ({ L: v.outsideLength, W: v.outsideWidth, t: lining(v) }), {
    label: 'inside length to width',
    kind: 'ratio',
    digits: 2,
    rule: 'inside-and-outside-differ',
  }),
  heightShare: row(heightShare, (v) => ({ H: v.outsideHeight, W: v.outsideWidth }), {
    label: 'outside height to width',
    kind: 'ratio',
    digits: 2,
    rule: 'height-from-width',
  }),
  longToShort: row(longToShort, (v) => ({ L: v.outsideLength, W: v.outsideWidth }), {
    label: 'outside, longer side to shorter',
    kind: 'ratio',
    digits: 2,
    builds: true,
    rule: 'simple-ratio',
  }),
  heightOfShorter: row(
    heightOfShorter,
    (v) => ({ H: v.outsideHeight, L: v.outsideLength, W: v.outsideWidth }),
    {
      label: 'outside height to the shorter side',
      kind: 'ratio',
      digits: 2,
      builds: true,
      rule: 'height-from-width',
    },
  ),
  lengthForRatio: row(lengthFromRatio, (v) => ({ r: v.wantedRatio, W: v.outsideWidth }), {
    label: 'length for the wanted ratio outside, width kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    rule: 'simple-ratio',
  }),
  widthForRatio: row(widthFromRatio, (v) => ({ r: v.wantedRatio, L: v.outsideLength }), {
    label: 'width for the wanted ratio outside, length kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    rule: 'simple-ratio',
  }),
  lengthForInside: row(
    lengthForInsideRatio,
    (v) => ({ r_in: v.wantedRatio, W: v.outsideWidth, t: lining(v) }),
    {
      label: 'outside length for the wanted ratio inside, width kept',
      kind: 'length',
      digits: 1,
      denominator: 32,
      rule: 'inside-and-outside-differ',
    },
  ),
  wallForInside: row(
    wallForInsideRatio,
    (v) => ({ r_in: v.wantedRatio, W: v.outsideWidth, L: v.outsideLength }),
    {
      label: 'wall for the wanted ratio inside, outside kept',
      when: (v) => linerOf(v) === 0,
      kind: 'length',
      digits: 1,
      denominator: 32,
      rule: 'inside-and-outside-differ',
    },
  ),
  compartmentLength: row(compartment, (v) => ({ l: v.clearLength, ...fittings(v, v.dividersAcross) }), {
    label: 'clear length of one compartment',
    when: isDivided,
    kind: 'length',
    digits: 1,
    denominator: 32,
    round: 'down',
    rule: 'linings-and-dividers-first',
  }),
  compartmentWidth: row(compartment, (v) => ({ l: v.clearWidth, ...fittings(v, v.dividersAlong) }), {
    label: 'clear width of one compartment',
    when: isDivided,
    kind: 'length',
    digits: 1,
    denominator: 32,
    round: 'down',
    rule: 'linings-and-dividers-first',
  }),
};
