/** Ratios of the current box, and what it would take to get the ratio the reader wants. */
import { compartment } from '../../calc/dividers.ts';
import { insideRatio, lengthForInsideRatio, wallForInsideRatio } from '../../calc/inside-ratio.ts';
import { heightShare, lengthFromRatio, ratio, widthFromRatio } from '../../calc/proportion.ts';
import { dividerSlip } from '../../calc/sizes.ts';
import type { Box } from '../box.ts';
import type { ResultTable } from '../result.ts';
import type { SizeResults } from './sizes.ts';

export interface ProportionResults {
  /** Outside and inside length to width; the inside NaN where the walls meet. */
  readonly outsideRatio: number;
  readonly insideRatio: number;
  /** Outside height to outside width. */
  readonly heightShare: number;
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

type Values = Box & SizeResults & ProportionResults;

const fittings = (v: Values, dividers: number) => ({
  f: v.lining,
  n: dividers,
  d: v.dividerThickness,
  s: dividerSlip,
});

export const proportionResults: ResultTable<keyof ProportionResults, Values> = {
  outsideRatio: {
    label: 'outside length to width',
    kind: 'ratio',
    digits: 2,
    relation: ratio,
    given: (v) => ({ L: v.outsideLength, W: v.outsideWidth }),
    rule: 'simple-ratio',
  },
  insideRatio: {
    label: 'inside length to width',
    kind: 'ratio',
    digits: 2,
    relation: insideRatio,
    given: (v) => ({ L: v.outsideLength, W: v.outsideWidth, t: v.wall }),
    rule: 'inside-and-outside-differ',
  },
  heightShare: {
    label: 'outside height to width',
    kind: 'ratio',
    digits: 2,
    relation: heightShare,
    given: (v) => ({ H: v.outsideHeight, W: v.outsideWidth }),
    rule: 'height-from-width',
  },
  lengthForRatio: {
    label: 'length for the wanted ratio outside, width kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    relation: lengthFromRatio,
    given: (v) => ({ r: v.wantedRatio, W: v.outsideWidth }),
    rule: 'simple-ratio',
  },
  widthForRatio: {
    label: 'width for the wanted ratio outside, length kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    relation: widthFromRatio,
    given: (v) => ({ r: v.wantedRatio, L: v.outsideLength }),
    rule: 'simple-ratio',
  },
  lengthForInside: {
    label: 'outside length for the wanted ratio inside, width kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    relation: lengthForInsideRatio,
    given: (v) => ({ r_in: v.wantedRatio, W: v.outsideWidth, t: v.wall }),
    rule: 'inside-and-outside-differ',
  },
  wallForInside: {
    label: 'wall for the wanted ratio inside, outside kept',
    kind: 'length',
    digits: 1,
    denominator: 32,
    relation: wallForInsideRatio,
    given: (v) => ({ r_in: v.wantedRatio, W: v.outsideWidth, L: v.outsideLength }),
    rule: 'inside-and-outside-differ',
  },
  compartmentLength: {
    label: 'clear length of one compartment',
    kind: 'length',
    digits: 1,
    denominator: 32,
    round: 'down',
    relation: compartment,
    given: (v) => ({ l: v.insideLength, ...fittings(v, v.dividersAcross) }),
    rule: 'linings-and-dividers-first',
  },
  compartmentWidth: {
    label: 'clear width of one compartment',
    kind: 'length',
    digits: 1,
    denominator: 32,
    round: 'down',
    relation: compartment,
    given: (v) => ({ l: v.insideWidth, ...fittings(v, v.dividersAlong) }),
    rule: 'linings-and-dividers-first',
  },
};
