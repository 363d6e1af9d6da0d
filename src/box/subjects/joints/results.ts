/** Results of the lesson on joint spacing. Over 150 lines: one table, whose rows share how a corner is laid out. */

import { work } from '../../../calc/core/working.ts';
import { tailPerPin, tailRoot, tailSpread } from '../../../calc/joints/dovetail.ts';
import * as jig from '../../../calc/joints/finger-jig.ts';
import * as layout from '../../../calc/joints/finger-layout.ts';
import * as area from '../../../calc/joints/glue-area.ts';
import * as fit from '../../../calc/joints/joint-fit.ts';
import * as keys from '../../../calc/joints/keys.ts';
import { choiceOf, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';
import { frontCutsFingers } from './corners.ts';

export interface JointsResults {
  /** Fingers of both walls that go into the height; whole only where nothing is left. */
  readonly fingerCount: number;
  /** Width left at the far edge, mm. */
  readonly edgeSliver: number;
  readonly oddCount: number;
  /** The same of the walls of a lift-off lid. */
  readonly lidFingerCount: number;
  readonly lidEdgeSliver: number;
  readonly lidOddCount: number;
  /** Width of a dovetail's tail at its root, in the box and in a lift-off lid, mm. */
  readonly tailRoot: number;
  readonly lidTailRoot: number;
  /** A tail in pins, on the face where the pin is narrowest. */
  readonly tailPerPin: number;
  /** What a tail gains in width on either side from root to end, mm. */
  readonly tailSpread: number;
  /** Depth of a key's slot along the diagonal, the wood left behind it, and the height of the corner for one key, mm. */
  readonly keyDepth: number;
  readonly keyLeft: number;
  readonly keySpacing: number;
  /** Long grain on long grain of all keys of a corner, on each of the two walls, mm². */
  readonly keyGlueArea: number;
  /** Height that the odd number fills with this cutter, and finger width that fills this height, mm. */
  readonly oddHeight: number;
  readonly oddFingerWidth: number;
  /** Hole in each side above the lowered front of a sliding-lid box, mm; 0 where a finger ends there. */
  readonly frontHole: number;
  /** Width of the cutter, and distance from it to the jig's pin, that keep the pitch at two finger widths, mm. */
  readonly slotWidth: number;
  readonly cutterToPin: number;
  /** Steps of an index jig along one wall. */
  readonly jigSteps: number;
  /** What the step errors come to at the last step, mm. */
  readonly addedStepError: number;
  /** Growth of a finger by the glue's water, mm; NaN for a wood without a figure. */
  readonly fingerSwelling: number;
  /** Long grain on long grain at one corner, mm²; 0 for a plain miter, a rabbet or a butt joint, NaN with keys or a spline. */
  readonly longGrainArea: number;
  /** The same corner as a plain miter: end grain, mm². */
  readonly miterArea: number;
}

export type JointsValues = Box & WoodFigures & SizeResults & JointsResults;
type V = JointsValues;

const row = rowsOf<V>();
const hasFingers = (v: V) => v.joint === 'finger';
/** A lift-off lid has walls and fingers of its own. */
const lidHasFingers = (v: V) => hasFingers(v) && v.kind === 'lift-off';
const lidLayoutOf = (v: V) => ({ H: v.lidHeight, f: v.fingerWidth });
const hasTails = (v: V) => v.joint === 'dovetail';
const tailsOf = (v: V, H: number) => ({
  H,
  n: v.tailCount,
  p: v.pinWidth,
  t: v.wall,
  s: v.dovetailSlope,
});
const hasKeys = (v: V) => v.joint === 'keyed-mitre';
const layoutOf = (v: V) => ({ H: v.jointedHeight, f: v.fingerWidth });
/** Joints without cheeks count as one finger. What keys and splines add is not counted here: no number. */
const fingersOf = (v: V) => {
  if (v.joint === 'finger') return layout.pieces(v.jointedHeight, v.fingerWidth);
  return v.joint === 'keyed-mitre' || v.joint === 'splined-mitre' ? Number.NaN : 1;
};

export const jointsResults: ResultTable<keyof JointsResults, V> = {
  fingerCount: row(layout.fingerCount, layoutOf, {
    label: 'fingers in the height',
    kind: 'number',
    digits: 2,
    rule: 'odd-finger-count',
    when: hasFingers,
  }),
  edgeSliver: row(layout.sliver, layoutOf, {
    label: 'left at the far edge',
    kind: 'length',
    as: 'fine',
    rule: 'no-sliver-at-the-edge',
    when: hasFingers,
  }),
  oddCount: row(layout.nearestOddCount, layoutOf, {
    label: 'nearest odd number of fingers',
    kind: 'count',
    rule: 'odd-finger-count',
    when: hasFingers,
  }),
  lidFingerCount: row(layout.fingerCount, lidLayoutOf, {
    label: 'fingers in the height of the lid’s walls',
    kind: 'number',
    digits: 2,
    rule: 'odd-finger-count',
    when: lidHasFingers,
  }),
  lidEdgeSliver: row(layout.sliver, lidLayoutOf, {
    label: 'left at the far edge of the lid’s walls',
    kind: 'length',
    as: 'fine',
    rule: 'no-sliver-at-the-edge',
    when: lidHasFingers,
  }),
  lidOddCount: row(layout.nearestOddCount, lidLayoutOf, {
    label: 'nearest odd number of fingers in the lid’s walls',
    kind: 'count',
    rule: 'odd-finger-count',
    when: lidHasFingers,
  }),
  oddHeight: row(layout.heightFromFingers, (v) => ({ n: v.oddCount, f: v.fingerWidth }), {
    label: 'height of the walls for that number',
    kind: 'length',
    as: 'size',
    rule: 'odd-finger-count',
    when: hasFingers,
  }),
  oddFingerWidth: row(layout.fingerWidthFromCount, (v) => ({ H: v.jointedHeight, n: v.oddCount }), {
    label: 'or finger width for that number',
    kind: 'length',
    digits: 2,
    rule: 'finger-width',
    when: hasFingers,
  }),
  frontHole: row(
    layout.frontHole,
    (v) => ({ h: v.outsideHeight - v.lidLip - v.lidThickness, H: v.outsideHeight, f: v.fingerWidth }),
    {
      label: 'hole in each side above the lowered front',
      kind: 'length',
      round: 'up',
      rule: 'front-ends-with-a-finger',
      when: frontCutsFingers,
    },
  ),
  slotWidth: row(jig.slotWidth, (v) => ({ f: v.fingerWidth, c: v.fingerFit }), {
    label: 'width of a slot: cutter, and pin of the jig',
    kind: 'length',
    digits: 2,
    denominator: 1000,
    builds: true,
    rule: 'finger-fit',
    when: hasFingers,
  }),
  cutterToPin: row(jig.cutterToPin, (v) => ({ f: v.fingerWidth, c: v.fingerFit }), {
    label: 'cutter to pin of the jig, which is a finger',
    kind: 'length',
    digits: 2,
    denominator: 1000,
    builds: true,
    rule: 'finger-fit',
    when: hasFingers,
  }),
  jigSteps: row(fit.stepsAlong, (v) => ({ n: layout.pieces(v.jointedHeight, v.fingerWidth) }), {
    label: 'steps along one wall',
    kind: 'count',
    rule: 'step-error-adds-up',
    when: hasFingers,
  }),
  addedStepError: row(fit.addedStepError, (v) => ({ i: v.jigSteps, delta: v.stepError }), {
    label: 'error after all steps',
    kind: 'length',
    as: 'fine',
    rule: 'step-error-adds-up',
    when: hasFingers,
  }),
  tailRoot: row(tailRoot, (v) => tailsOf(v, v.jointedHeight), {
    label: 'width of a tail at its root',
    kind: 'length',
    round: 'down',
    rule: 'finger-width',
    when: hasTails,
  }),
  lidTailRoot: row(tailRoot, (v) => tailsOf(v, v.lidHeight), {
    label: 'width of a tail of the lid at its root',
    kind: 'length',
    round: 'down',
    rule: 'finger-width',
    when: (v) => hasTails(v) && v.kind === 'lift-off',
  }),
  tailPerPin: row(tailPerPin, (v) => ({ H: v.jointedHeight, n: v.tailCount, p: v.pinWidth }), {
    label: 'tail, in pins',
    kind: 'number',
    digits: 1,
    rule: 'half-pins',
    when: hasTails,
  }),
  tailSpread: row(tailSpread, (v) => ({ t: v.wall, s: v.dovetailSlope }), {
    label: 'spread of a tail on either side',
    kind: 'length',
    as: 'fine',
    rule: 'dovetail-slope',
    when: hasTails,
  }),
  keyDepth: row(keys.keyDepth, (v) => ({ t: v.wall }), {
    label: 'depth of a key’s slot along the diagonal',
    kind: 'length',
    rule: 'keys-and-splines',
    when: hasKeys,
  }),
  keyLeft: row(keys.keyLeft, (v) => ({ t: v.wall, d: v.keyDepth }), {
    label: 'wood left behind a key',
    kind: 'length',
    round: 'down',
    rule: 'keys-and-splines',
    when: hasKeys,
  }),
  keySpacing: row(keys.keySpacing, (v) => ({ H: v.jointedHeight, N: v.keyCount }), {
    label: 'height of the corner for one key',
    kind: 'length',
    rule: 'keys-and-splines',
    when: hasKeys,
  }),
  keyGlueArea: row(keys.keyGlueArea, (v) => ({ N: v.keyCount, d: v.keyDepth }), {
    label: 'long-grain glue area of the keys on each wall',
    kind: 'area',
    rule: 'keys-and-splines',
    when: hasKeys,
  }),
  fingerSwelling: row(
    fit.fingerSwelling,
    (v) => ({
      f: v.fingerWidth,
      C: v.tangentialCoefficient,
      dM: fit.glueWater,
    }),
    {
      label: 'growth of a finger by the glue’s water',
      kind: 'length',
      as: 'fine',
      round: 'up',
      rule: 'finger-fit',
      when: hasFingers,
    },
  ),
  longGrainArea: choiceOf<V>()(
    [area.fingerGlueArea, area.dovetailGlueArea],
    (v) =>
      v.joint === 'dovetail'
        ? work(area.dovetailGlueArea, { N: 2 * v.tailCount, s: v.dovetailSlope, t: v.wall })
        : work(area.fingerGlueArea, { n: fingersOf(v), t: v.wall }),
    {
      label: 'long-grain glue area of a corner',
      kind: 'area',
      rule: 'long-grain-to-long-grain',
    },
  ),
  miterArea: row(area.miterGlueArea, (v) => ({ H: v.jointedHeight, t: v.wall }), {
    label: 'end-grain glue area of a plain miter',
    kind: 'area',
    rule: 'long-grain-to-long-grain',
  }),
};
