/** What the reader's errors come to at the corners, and what the measured box says: out of square, out of flat. */
import { diagonalDifference, endShift, leanFromDiagonals } from '../../../calc/square/diagonals.ts';
import { endStep, leanOfUnequalWalls, lengthsApart } from '../../../calc/square/ends.ts';
import { miterGapAdded, miterGapOfLength, miterGapRandom } from '../../../calc/square/miters.ts';
import { lipAfterRim, rimLoss } from '../../../calc/square/rim.ts';
import { lidGapOfTwist, twistAngle } from '../../../calc/square/twist.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { Box } from '../inputs.ts';
import { isMitered } from '../joints/corners.ts';
import type { SizeResults } from '../size/results.ts';

export interface SquareResults {
  /** Last corner of a mitered box, mm: all cuts off the same way, each its own way, and from unequal walls. */
  readonly lastCornerAdded: number;
  readonly lastCornerRandom: number;
  readonly lastCornerOfLengths: number;
  /** Step of an end out of square over the height of the wall, mm. */
  readonly endStep: number;
  /** How far opposite walls differ at worst, each cut to its own mark, mm; and how the ends lean then, degrees. */
  readonly wallsApart: number;
  readonly endsLean: number;
  /** What the diagonals inside would differ by, racked by the error of the saw, mm. */
  readonly diagonalsRacked: number;
  /** From the diagonals as measured: angle off square, degrees, and how far the far end stands aside, mm. */
  readonly angleOffSquare: number;
  readonly endShift: number;
  /** From the rock as measured: turn of one end against the other, degrees, and the gap under a flat lid, mm. */
  readonly twist: number;
  readonly lidGapOfTwist: number;
  /** The rim rubbed flat: what comes off at two corners, mm, and the wood then left above the lid's groove there. */
  readonly rimLoss: number;
  readonly lipAfterRim: number;
}

export type SquareValues = Box & SizeResults & SquareResults;
type V = SquareValues;

const row = rowsOf<V>();
const isSquareCut = (v: V) => !isMitered(v);
const isMeasured = (v: V) => v.diagonalsApart > 0;
const rocks = (v: V) => v.rock > 0;
const gap = { kind: 'length', as: 'fine', round: 'up' } as const;
const angle = { kind: 'angle', digits: 2 } as const;
const inside = (v: V) => ({ a: v.insideLength, b: v.insideWidth });
const measured = (v: V) => ({ ...inside(v), D: v.diagonalsApart });
const miter = { ...gap, when: isMitered, rule: 'eight-cuts-of-a-miter' } as const;

export const squareResults: ResultTable<keyof SquareResults, V> = {
  lastCornerAdded: row(miterGapAdded, (v) => ({ t: v.wall, e: v.angleError }), {
    ...miter,
    label: 'last corner, all cuts off the same way',
  }),
  lastCornerRandom: row(miterGapRandom, (v) => ({ t: v.wall, e: v.angleError }), {
    ...miter,
    label: 'last corner, each cut off its own way',
  }),
  endStep: row(endStep, (v) => ({ w: v.jointedHeight, e: v.angleError }), {
    ...gap,
    when: isSquareCut,
    label: 'step of an end out of square',
    rule: 'first-end-square-before-the-second',
  }),
  wallsApart: row(lengthsApart, (v) => ({ e: v.lengthError }), {
    ...gap,
    label: 'opposite walls apart at worst, each cut to its own mark',
    rule: 'opposite-walls-from-one-stop',
  }),
  lastCornerOfLengths: row(miterGapOfLength, (v) => ({ d: v.wallsApart }), {
    ...gap,
    when: isMitered,
    label: 'miter that walls so unequal hold open',
    rule: 'opposite-walls-from-one-stop',
  }),
  endsLean: row(leanOfUnequalWalls, (v) => ({ d: v.wallsApart, b: v.insideWidth }), {
    ...angle,
    label: 'lean of the ends between walls so unequal',
    rule: 'opposite-walls-from-one-stop',
  }),
  diagonalsRacked: row(diagonalDifference, (v) => ({ ...inside(v), e: v.angleError }), {
    ...gap,
    label: 'difference of the diagonals, racked by the error of the saw',
    rule: 'diagonals',
  }),
  angleOffSquare: row(leanFromDiagonals, measured, {
    ...angle,
    when: isMeasured,
    label: 'angle off square, from the diagonals you measured',
    rule: 'diagonals',
  }),
  endShift: row(endShift, measured, {
    ...gap,
    when: isMeasured,
    label: 'so far the far end stands aside',
    rule: 'diagonals',
  }),
  twist: row(twistAngle, (v) => ({ h: v.rock, b: v.outsideWidth }), {
    ...angle,
    when: rocks,
    label: 'turn of one end against the other, from the rock you measured',
    rule: 'twist',
  }),
  lidGapOfTwist: row(lidGapOfTwist, (v) => ({ h: v.rock }), {
    ...gap,
    when: rocks,
    label: 'gap under a flat lid at two corners',
    rule: 'twist',
  }),
  rimLoss: row(rimLoss, (v) => ({ h: v.rock }), {
    ...gap,
    when: rocks,
    label: 'comes off at two corners to make the rim flat',
    rule: 'sand-the-rim-flat',
  }),
  lipAfterRim: row(lipAfterRim, (v) => ({ m: v.lidLip, h: v.rock }), {
    kind: 'length',
    digits: 1,
    round: 'down',
    when: rocks,
    label: 'wood then left above the lid’s groove there',
    rule: 'sand-the-rim-flat',
  }),
};
