/** Checks that the proportion lesson teaches. */
import type { Check } from '../verdict.ts';

export const proportionChecks: readonly Check[] = [
  {
    rule: 'simple-ratio',
    label: 'outside length to width',
    kind: 'ratio',
    measure: (v) => v.outsideRatio,
    usual: () => [1.5, 1.8],
    says: {
      low: 'Near square: it may look undecided, but nothing breaks.',
      high: 'Long for its width: fine for pencils, unusual otherwise.',
      inside: 'Between 3:2 and 9:5, where most people find a rectangle at ease.',
    },
  },
];
