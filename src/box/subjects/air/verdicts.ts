/** Checks that the lesson on air and wood teaches. */

import type { Check } from '../../core/verdict.ts';
import { DRY_ABOVE_DAMP } from './inputs.ts';
import type { WaitValues } from './wait.ts';

/** A week or two is how long makers let wood lie: common practice, no source. Days. */
const FORTNIGHT = 14;

export const airChecks: readonly Check<WaitValues>[] = [
  {
    id: 'write-the-humidity',
    rule: 'write-the-humidity',
    label: 'humidity at the dampest, above that at the driest',
    kind: 'points',
    of: 'humiditySwing',
    usual: () => [0, Number.POSITIVE_INFINITY],
    works: () => [0, Number.POSITIVE_INFINITY],
    says: {
      low: DRY_ABOVE_DAMP,
      high: '',
      inside: 'The year goes from dry to damp.',
    },
  },
  {
    id: 'thickness-squared',
    rule: 'thickness-squared',
    label: 'days until the walls have made nine tenths of a change',
    kind: 'days',
    of: 'waitWall',
    usual: [Number.NEGATIVE_INFINITY, FORTNIGHT],
    unknown: 'The tables give no density for this wood, so how fast it takes up moisture is not known here.',
    says: {
      low: '',
      high: 'The usual week or two is too short for walls as thick as these. Weigh an offcut until it stops.',
      inside: 'A week or two with air on both faces is enough for walls as thin as these.',
    },
  },
  {
    id: 'cut-oversize-and-rest',
    rule: 'cut-oversize-and-rest',
    label: 'wood left to plane off, both faces together',
    kind: 'length',
    of: 'planedOff',
    usual: { mm: [1.5, 3], inch: [1 / 16, 1 / 8] },
    says: {
      low: 'Too little to take out the bend that fresh-sawn pieces may get as they rest.',
      high: 'More than most makers leave; each slice of the board costs that much more.',
      inside: 'Enough to plane a piece flat again after it has rested.',
    },
  },
];
