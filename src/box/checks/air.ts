/** Checks that the lesson on air and wood teaches. */
import type { Check } from '../verdict.ts';

/** A week or two is how long makers let wood lie: common practice, no source. Days. */
const FORTNIGHT = 14;

export const airChecks: readonly Check[] = [
  {
    rule: 'thickness-squared',
    label: 'days until the walls have made nine tenths of a change',
    kind: 'days',
    applies: (v) => !Number.isNaN(v.waitWall),
    measure: (v) => v.waitWall,
    usual: () => [0, FORTNIGHT],
    says: {
      low: '',
      high: 'The usual week or two is too short for walls as thick as these. Weigh an offcut until it stops.',
      inside: 'A week or two with air on both faces is enough for walls as thin as these.',
    },
  },
  {
    rule: 'cut-oversize-and-rest',
    label: 'wood left to plane off, both faces together',
    kind: 'length',
    measure: (v) => 2 * v.planing,
    // 1/16 to 1/8 in: common practice, no source.
    usual: () => [1.5, 3.2],
    says: {
      low: 'Too little to take out the bend that fresh-sawn pieces may get as they rest.',
      high: 'More than most makers leave; each slice of the board costs that much more.',
      inside: 'Enough to plane a piece flat again after it has rested.',
    },
  },
];
