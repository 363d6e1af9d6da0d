/** Whether a sliding lid jams when it is pulled off its middle. Of a lid that does not slide these say nothing. */
import * as run from '../../calc/lid-run.ts';
import type { Box } from '../box.ts';
import type { Result, ResultTable } from '../result.ts';
import type { MovementResults } from './movement.ts';
import type { SizeResults } from './sizes.ts';

export interface LidRunResults {
  /** Lengths in mm: what the grooves still hold of the half-open lid, and at what length it jams. */
  readonly lidHeldHalfOpen: number;
  readonly jamLength: number;
  readonly jamLengthAtEdge: number;
  /** Times the ordinary drag, half open; NaN where it jams. */
  readonly dragFactor: number;
  /** Degrees, half open, today. */
  readonly rattleAngle: number;
}

type V = Box & SizeResults & MovementResults & LidRunResults;
const inTheMiddle = 'pull-in-the-middle';
const longLids = 'long-lids-run-short-ones-jam';

/** A length of lid in its grooves; limits are rounded up. */
const length = (
  label: string,
  relation: Result<V>['relation'],
  given: Result<V>['given'],
  round: Result<V>['round'],
  rule: string,
): Result<V> => ({ label, kind: 'length', digits: 1, denominator: 32, round, relation, given, rule });

export const lidRunResults: ResultTable<keyof LidRunResults, V> = {
  lidHeldHalfOpen: length(
    'lid in its side grooves, half open',
    run.heldHalfOpen,
    (v) => ({ l: v.insideLength, t: v.wall, g: v.lidGrooveDepth }),
    'down',
    longLids,
  ),
  jamLength: length(
    'length in the grooves at which the lid jams',
    run.jamLength,
    (v) => ({ mu: v.friction, e: v.pullOffset }),
    'up',
    inTheMiddle,
  ),
  jamLengthAtEdge: length(
    'the same, pulled at its very edge',
    run.jamLengthAtEdge,
    (v) => ({ mu: v.friction, W: v.lidWidth }),
    'up',
    longLids,
  ),
  dragFactor: {
    label: 'drag of the half-open lid, times a pull in the middle',
    kind: 'number',
    digits: 2,
    relation: run.dragFactor,
    given: (v) => ({ mu: v.friction, e: v.pullOffset, L: v.lidHeldHalfOpen }),
    rule: inTheMiddle,
  },
  rattleAngle: {
    label: 'turn of the half-open lid in its play',
    kind: 'angle',
    digits: 2,
    relation: run.rattleAngle,
    given: (v) => ({ c: v.lidPlay, L: v.lidHeldHalfOpen }),
    rule: longLids,
  },
};
