/** Ratios of the current box. */
import { insideRatio } from '../../calc/inside-ratio.ts';
import * as proportion from '../../calc/proportion.ts';
import type { Box } from '../box.ts';
import type { ResultTable } from '../result.ts';
import type { SizeResults } from './sizes.ts';

export interface ProportionResults {
  /** Outside and inside length to width. */
  readonly outsideRatio: number;
  readonly insideRatio: number;
}

type Values = Box & SizeResults & ProportionResults;

export const proportionResults: ResultTable<keyof ProportionResults, Values> = {
  outsideRatio: {
    label: 'outside length to width',
    kind: 'ratio',
    relation: proportion.ratio,
    given: (v) => ({ L: v.outsideLength, W: v.outsideWidth }),
  },
  insideRatio: {
    label: 'inside length to width',
    kind: 'ratio',
    relation: insideRatio,
    given: (v) => ({ L: v.outsideLength, W: v.outsideWidth, t: v.wall }),
  },
};
