/** What the lips, the web and the corner of the current box come to. */
import * as corner from '../../calc/groove-corner.ts';
import { web, webStiffness, webStrength } from '../../calc/groove-web.ts';
import * as grooves from '../../calc/grooves.ts';
import type { Choice, Result, ResultTable } from '../result.ts';
import type { Values } from '../values.ts';

export interface GroovesResults {
  /** Load on each mm that splits the lip off, N/mm; NaN where the wood's strength across the grain is not known. */
  readonly lidLipLoad: number;
  readonly bottomLipLoad: number;
  /** Push of a thumb that splits it off, N. */
  readonly lidLipPush: number;
  readonly bottomLipPush: number;
  /** Load on each mm of lip from 1 kg of contents, N/mm: at rest, and when the box is dropped. */
  readonly contentsLoad: number;
  readonly dropLoad: number;
  /** Wood behind the deeper of the two grooves, mm, and what is left there of the wall's strength and stiffness, %. */
  readonly web: number;
  readonly webStrength: number;
  readonly webStiffness: number;
  /** Finger left above the bottom's groove, mm; negative where the groove runs into the next finger. */
  readonly fingerAboveGroove: number;
  /** Where the bottom's groove stops in the walls that would show it, mm from their ends. */
  readonly grooveStop: number;
  /** Width to cut the bottom's groove, mm. */
  readonly grooveWidth: number;
}

/** 1 kg at standard gravity, N. */
const oneKilogram = 9.80665;
/** A fall from a table's edge or so, stopped by floor and box together, mm: an assumption, said in the lesson. */
const fall = { h: 500, s: 5 };
/** Middle of the usual slip of 0.2 to 0.3 mm. */
const slip = 0.25;

/** Of the grooves this box has; 0 with none. */
const deeper = (v: Values) =>
  Math.max(v.bottomSeat === 'groove' ? v.grooveDepth : 0, v.kind === 'sliding' ? v.lidGrooveDepth : 0);

type Lip = 'lidLip' | 'bottomLip';
type Depth = 'lidGrooveDepth' | 'grooveDepth';

/** Beam theory while the lip is slender enough for it, else the lower figure for a stubby lip. */
const byShape = (lip: Lip, depth: Depth): Choice<Values> => ({
  among: [grooves.lipLoad, grooves.stubbyLipLoad],
  choose: (v) => (grooves.isSlender(v[lip], v[depth]) ? grooves.lipLoad : grooves.stubbyLipLoad),
});

const lipLoad = (label: string, lip: Lip, depth: Depth, rule: string): Result<Values> => ({
  label,
  kind: 'lineLoad',
  relation: byShape(lip, depth),
  // The load at the mouth of the groove is the worst case.
  given: (v) => ({ sigma_t: v.tensionPerpendicular, m: v[lip], d: v[depth] }),
  rule,
});
const lipPush = (
  label: string,
  load: 'lidLipLoad' | 'bottomLipLoad',
  depth: Depth,
  rule: string,
): Result<Values> => ({
  label,
  kind: 'force',
  digits: 0,
  relation: grooves.lipPush,
  given: (v) => ({ q: v[load], a: grooves.thumbWidth, d: v[depth] }),
  rule,
});

const lidRule = 'lip-beside-lid-groove';
const bottomRule = 'lip-below-bottom-groove';
const perimeter = (v: Values) => ({ W: oneKilogram, l: v.insideLength, b: v.insideWidth });

export const groovesResults: ResultTable<keyof GroovesResults, Values> = {
  lidLipLoad: lipLoad('load that splits off the lid’s lip', 'lidLip', 'lidGrooveDepth', lidRule),
  bottomLipLoad: lipLoad('load that splits off the bottom’s lip', 'bottomLip', 'grooveDepth', bottomRule),
  lidLipPush: lipPush('push the lid’s lip takes', 'lidLipLoad', 'lidGrooveDepth', lidRule),
  bottomLipPush: lipPush('push the bottom’s lip takes', 'bottomLipLoad', 'grooveDepth', bottomRule),
  contentsLoad: {
    label: '1 kg of contents at rest, on the lip',
    kind: 'lineLoad',
    relation: grooves.contentsLoad,
    given: perimeter,
    rule: bottomRule,
  },
  dropLoad: {
    label: 'the same 1 kg when the box is dropped',
    kind: 'lineLoad',
    relation: grooves.dropLoad,
    given: (v) => ({ ...perimeter(v), ...fall }),
    rule: bottomRule,
  },
  web: {
    label: 'wood behind the deeper groove',
    kind: 'length',
    relation: web,
    given: (v) => ({ t: v.wall, g: deeper(v) }),
    rule: 'groove-depth',
  },
  webStrength: {
    label: 'strength left behind the groove',
    kind: 'percent',
    digits: 0,
    relation: webStrength,
    given: (v) => ({ w: v.web, t: v.wall }),
    rule: 'groove-depth',
  },
  webStiffness: {
    label: 'stiffness left behind the groove',
    kind: 'percent',
    digits: 0,
    relation: webStiffness,
    given: (v) => ({ w: v.web, t: v.wall }),
    rule: 'groove-depth',
  },
  fingerAboveGroove: {
    label: 'finger left above the bottom’s groove',
    kind: 'length',
    relation: corner.fingerAboveGroove,
    given: (v) => ({ m: v.bottomLip, b: v.bottomTongue, f: v.fingerWidth }),
    rule: 'groove-inside-one-finger',
  },
  grooveStop: {
    label: 'stopped groove: distance from the end',
    kind: 'length',
    relation: corner.grooveStop,
    given: (v) => ({ t: v.wall, g: v.grooveDepth }),
    rule: 'groove-inside-one-finger',
  },
  grooveWidth: {
    label: 'width of the bottom’s groove',
    kind: 'length',
    digits: 2,
    round: 'up',
    relation: corner.grooveWidth,
    given: (v) => ({ p: v.bottomTongue, s: slip }),
    rule: 'groove-width-from-the-panel',
  },
};
