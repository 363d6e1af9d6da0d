/** Results of the lesson on joint spacing. */
import * as layout from '../../calc/finger-layout.ts';
import * as area from '../../calc/glue-area.ts';
import * as fit from '../../calc/joint-fit.ts';
import type { ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

export interface JointsResults {
  /** Fingers of both walls that go into the height; whole only where nothing is left. */
  readonly fingerCount: number;
  /** Width left at the far edge, mm. */
  readonly edgeSliver: number;
  readonly oddCount: number;
  /** Height that the odd number fills with this cutter, and finger width that fills this height, mm. */
  readonly oddHeight: number;
  readonly oddFingerWidth: number;
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

const layoutOf = (v: Values) => ({ H: v.outsideHeight, f: v.fingerWidth });
/** Joints without cheeks count as one finger. What keys and splines add is not counted here: no number. */
const fingersOf = (v: Values) => {
  if (v.joint === 'finger') return layout.pieces(v.outsideHeight, v.fingerWidth);
  return v.joint === 'keyed-mitre' || v.joint === 'splined-mitre' ? Number.NaN : 1;
};

export const jointsResults: ResultTable<keyof JointsResults, Values> = {
  fingerCount: {
    label: 'fingers in the height',
    kind: 'number',
    digits: 2,
    relation: layout.fingerCount,
    given: layoutOf,
    rule: 'odd-finger-count',
  },
  edgeSliver: {
    label: 'left at the far edge',
    kind: 'length',
    relation: layout.sliver,
    given: layoutOf,
    rule: 'no-sliver-at-the-edge',
  },
  oddCount: {
    label: 'nearest odd number of fingers',
    kind: 'count',
    relation: layout.nearestOddCount,
    given: layoutOf,
    rule: 'odd-finger-count',
  },
  oddHeight: {
    label: 'height for that number',
    kind: 'length',
    relation: layout.heightFromFingers,
    given: (v) => ({ n: v.oddCount, f: v.fingerWidth }),
    rule: 'odd-finger-count',
  },
  oddFingerWidth: {
    label: 'or finger width for that number',
    kind: 'length',
    digits: 2,
    relation: layout.fingerWidthFromCount,
    given: (v) => ({ H: v.outsideHeight, n: v.oddCount }),
    rule: 'finger-width',
  },
  jigSteps: {
    label: 'steps along one wall',
    kind: 'count',
    relation: fit.stepsAlong,
    given: (v) => ({ n: layout.pieces(v.outsideHeight, v.fingerWidth) }),
    rule: 'step-error-adds-up',
  },
  addedStepError: {
    label: 'error after all steps',
    kind: 'length',
    digits: 2,
    relation: fit.addedStepError,
    given: (v) => ({ i: v.jigSteps, delta: v.stepError }),
    rule: 'step-error-adds-up',
  },
  fingerSwelling: {
    label: 'growth of a finger by the glue’s water',
    kind: 'length',
    digits: 2,
    round: 'up',
    relation: fit.fingerSwelling,
    given: (v) => ({
      f: v.fingerWidth,
      C: v.tangentialCoefficient,
      dM: fit.glueWater,
    }),
    rule: 'finger-fit',
  },
  longGrainArea: {
    label: 'long-grain glue area of a corner',
    kind: 'area',
    relation: {
      among: [area.fingerGlueArea, area.dovetailGlueArea],
      choose: (v) => (v.joint === 'dovetail' ? area.dovetailGlueArea : area.fingerGlueArea),
    },
    given: (v) => ({ n: fingersOf(v), N: 2 * v.tailCount, s: v.dovetailSlope, t: v.wall }),
    rule: 'long-grain-to-long-grain',
  },
  miterArea: {
    label: 'end-grain glue area of a plain miter',
    kind: 'area',
    relation: area.miterGlueArea,
    given: (v) => ({ H: v.outsideHeight, t: v.wall }),
    rule: 'long-grain-to-long-grain',
  },
};
