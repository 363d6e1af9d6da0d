/** The way of a sliding lid and whether it jams when it is pulled off its middle; the lid line of the other lids. */
import * as opening from '../../../calc/lid/opening.ts';
import * as run from '../../../calc/lid/run.ts';
import { practice } from '../../core/practice.ts';
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
  /** How far the front of a sliding-lid box ends below its sides, mm. */
  readonly frontLowered: number;
  /** Depth of the thumb notch, mm; below 1 mm none is cut, and where too little wood would be left nothing is said. */
  readonly notchDepth: number;
  /** Share of the closed box’s height that is the lid, where it has walls of its own. */
  readonly lidShare: number;
}

export type LidValues = MovementValues & LidResults;
type V = LidValues;
const inTheMiddle = 'pull-in-the-middle';
const longLids = 'long-lids-run-short-ones-jam';

const row = rowsOf<V>();
const slides = (v: MovementValues) => v.kind === 'sliding';
/** A lid with a thumb notch, and thick enough to think of one. */
const notched = (v: MovementValues) => slides(v) && v.pull === 'notch' && v.lidTongue > practice.notchFloor;
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
  frontLowered: row(opening.frontLowered, (v) => ({ m_d: v.lidLip, d: v.lidThickness }), {
    label: 'front below the sides',
    kind: 'length',
    as: 'size',
    rule: 'lid-line',
    when: slides,
  }),
  notchDepth: row(
    opening.notchDepth,
    (v) => ({ n_m: practice.notchDepth, T: v.lidTongue, f: practice.notchFloor }),
    {
      label: 'depth of the thumb notch',
      kind: 'length',
      digits: 1,
      denominator: 32,
      round: 'down',
      rule: 'thumb-notch',
      when: notched,
    },
  ),
  lidShare: row(opening.lidShare, (v) => ({ h: v.lidHeight, H: v.outsideHeight }), {
    label: 'lid’s share of the height',
    kind: 'ratio',
    digits: 2,
    rule: 'lid-line',
    when: (v) => !slides(v),
  }),
};
