/** Checks that the lesson on wall thickness and size teaches. */
import { thickestBand, thinnestBand } from '../../../calc/walls/walls.ts';
import type { Check } from '../../core/verdict.ts';
import type { WallsValues } from './results.ts';

export const wallsChecks: readonly Check<WallsValues>[] = [
  {
    id: 'wall-thickness',
    rule: 'wall-thickness',
    label: 'wall thickness',
    kind: 'length',
    of: 'wall',
    declares: { mm: [thinnestBand.a, thickestBand.b], inch: [1 / 4, 1 / 2] },
    usual: (v) => [v.thinnestUsualWall, v.thickestUsualWall],
    says: {
      low: 'Thin for this size: a side gives under the thumb, and grooves and joints leave little wood.',
      high: 'Thick for this size: the box looks heavy and loses inside room.',
      inside: 'Stiff enough for the hand, and still light for a box of this size.',
    },
  },
  {
    id: 'walls-cost-inside-volume',
    rule: 'walls-cost-inside-volume',
    label: 'room the walls leave around the contents',
    kind: 'length',
    of: 'roomLeft',
    usual: () => [0, Number.POSITIVE_INFINITY],
    works: () => [0, Number.POSITIVE_INFINITY],
    says: {
      low: 'The contents do not go in: take two walls off the outside before you promise the inside.',
      high: '',
      inside: 'The contents go in.',
    },
  },
];
