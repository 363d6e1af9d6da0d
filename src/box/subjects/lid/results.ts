/** Whether a sliding lid jams when it is pulled off its middle. Of a lid that does not slide these say nothing. */
import * as run from '../../../calc/lid/run.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { MovementValues } from '../movement/results.ts';

export interface LidResults {
  /** Lengths in mm: what the grooves still hold of the half-open lid, and at what length it jams. */
  readonly lidHeldHalfOpen: number;
  readonly jamLength: number;
  readonly jamLengthAtEdge: number;
  /** Times the ordinary drag, half open; NaN where it jams. */
  readonly dragFactor: number;
  /** Degrees, half open, today. */
  readonly rattleAngle: number;
}

export type LidValues = MovementValues & LidResults;
type V = LidValues;
const inTheMiddle = 'pull-in-the-middle';
const longLids = 'long-lids-run-short-ones-jam';

const row = rowsOf<V>();
const slides = (v: V) => v.kind === 'sliding';
/** A length of lid in its grooves; limits are rounded up. */
const length = { kind: 'length', digits: 1, denominator: 32, when: slides } as const;

export const lidResults: ResultTable<keyof LidResults, V> = {
  lidHeldHalfOpen: row(run.heldHalfOpen, (v) => ({ l: v.insideLength, t: v.wall, g: v.lidGrooveDepth }), {
    ...length,
    label: 'lid in its side grooves, half open',
    round: 'down',
    rule: longLids,
  }),
  jamLength: row(run.jamLength, (v) => ({ mu: v.friction, e: v.pullOffset }), {
    ...length,
    label: 'length in the grooves at which the lid jams',
    round: 'up',
    rule: inTheMiddle,
  }),
  jamLengthAtEdge: row(run.jamLengthAtEdge, (v) => ({ mu: v.friction, W: v.lidWidth }), {
    ...length,
    label: 'the same, pulled at its very edge',
    round: 'up',
    rule: longLids,
  }),
  dragFactor: row(run.dragFactor, (v) => ({ mu: v.friction, e: v.pullOffset, L: v.lidHeldHalfOpen }), {
    label: 'drag of the half-open lid, times a pull in the middle',
    kind: 'number',
    digits: 2,
    rule: inTheMiddle,
    when: slides,
  }),
  rattleAngle: row(run.rattleAngle, (v) => ({ c: v.lidPlayToday, W: v.lidWidth, L: v.lidHeldHalfOpen }), {
    label: 'turn of the half-open lid in its play',
    kind: 'angle',
    digits: 2,
    rule: longLids,
    when: slides,
  }),
};
