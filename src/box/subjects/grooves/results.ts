/** What the lips, the web and the corner of the current box come to. Over 150 lines: one table, a row for each number. */

import { work } from '../../../calc/core/working.ts';
import * as corner from '../../../calc/grooves/groove-corner.ts';
import { grooveShare, web, webStiffness, webStrength } from '../../../calc/grooves/groove-web.ts';
import * as grooves from '../../../calc/grooves/grooves.ts';
import { practice } from '../../core/practice.ts';
import { choiceOf, type Result, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';

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
  /** Depth of each groove as a share of the wall, %. */
  readonly bottomGrooveShare: number;
  readonly lidGrooveShare: number;
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

export type GroovesValues = Box & WoodFigures & SizeResults & GroovesResults;
type V = GroovesValues;

const row = rowsOf<V>();
/** Of the groove or rabbet of the bottom and the groove of the lid; all kinds of box have both. */
const deeper = (v: V) => Math.max(v.grooveDepth, v.lidGrooveDepth);
const hasBottomGroove = (v: V) => v.bottomSeat === 'groove';

type Lip = 'lidLip' | 'bottomLip';
type Depth = 'lidGrooveDepth' | 'grooveDepth';

/** Beam theory while the lip is slender enough for it, else the lower figure for a stubby lip. The load at the mouth of the groove is the worst case. */
const lipLoad = (label: string, lip: Lip, depth: Depth, say: Pick<Result<V>, 'rule' | 'when'>) =>
  choiceOf<V>()(
    [grooves.lipLoad, grooves.stubbyLipLoad],
    (v) => {
      const [sigma_t, m, d] = [v.tensionPerpendicular, v[lip], v[depth]];
      return grooves.isSlender(m, d)
        ? work(grooves.lipLoad, { sigma_t, m, d })
        : work(grooves.stubbyLipLoad, { sigma_t, d });
    },
    { label, kind: 'lineLoad', ...say },
  );
const lipPush = (
  label: string,
  load: 'lidLipLoad' | 'bottomLipLoad',
  depth: Depth,
  say: Pick<Result<V>, 'rule' | 'when'>,
) =>
  row(grooves.lipPush, (v) => ({ q: v[load], a: grooves.thumbWidth, d: v[depth] }), {
    label,
    kind: 'force',
    digits: 0,
    ...say,
  });

const bottomRule = 'lip-below-bottom-groove';
const ofLid = { rule: 'lip-beside-lid-groove' };
const ofBottom = { rule: bottomRule, when: hasBottomGroove };
const perimeter = (v: V) => ({ W: oneKilogram, l: v.insideLength, b: v.insideWidth });

export const groovesResults: ResultTable<keyof GroovesResults, V> = {
  lidLipLoad: lipLoad('load that splits off the lid’s lip', 'lidLip', 'lidGrooveDepth', ofLid),
  bottomLipLoad: lipLoad('load that splits off the bottom’s lip', 'bottomLip', 'grooveDepth', ofBottom),
  lidLipPush: lipPush('push the lid’s lip takes', 'lidLipLoad', 'lidGrooveDepth', ofLid),
  bottomLipPush: lipPush('push the bottom’s lip takes', 'bottomLipLoad', 'grooveDepth', ofBottom),
  contentsLoad: row(grooves.contentsLoad, perimeter, {
    label: '1 kg of contents at rest, on the lip',
    kind: 'lineLoad',
    rule: bottomRule,
  }),
  dropLoad: row(grooves.dropLoad, (v) => ({ ...perimeter(v), ...fall }), {
    label: 'the same 1 kg when the box is dropped',
    kind: 'lineLoad',
    rule: bottomRule,
  }),
  web: row(web, (v) => ({ t: v.wall, g: deeper(v) }), {
    label: 'wood behind the deeper groove',
    kind: 'length',
    rule: 'groove-depth',
  }),
  webStrength: row(webStrength, (v) => ({ w: v.web, t: v.wall }), {
    label: 'strength left behind the groove',
    kind: 'percent',
    digits: 0,
    rule: 'groove-depth',
  }),
  webStiffness: row(webStiffness, (v) => ({ w: v.web, t: v.wall }), {
    label: 'stiffness left behind the groove',
    kind: 'percent',
    digits: 0,
    rule: 'groove-depth',
  }),
  grooveWidth: row(corner.grooveWidth, (v) => ({ p: v.bottomTongue, s: practice.bottomSlip }), {
    label: 'width of the bottom’s groove',
    kind: 'length',
    as: 'fine',
    round: 'up',
    builds: true,
    rule: 'groove-width-from-the-panel',
    when: hasBottomGroove,
  }),
  bottomGrooveShare: row(grooveShare, (v) => ({ g: v.grooveDepth, t: v.wall }), {
    label: 'depth of the bottom’s groove, share of the wall',
    kind: 'percent',
    digits: 0,
    rule: 'groove-depth',
  }),
  lidGrooveShare: row(grooveShare, (v) => ({ g: v.lidGrooveDepth, t: v.wall }), {
    label: 'depth of the lid’s groove, share of the wall',
    kind: 'percent',
    digits: 0,
    rule: 'groove-depth',
  }),
  fingerAboveGroove: row(
    corner.fingerAboveGroove,
    (v) => ({ m: v.bottomLip, b: v.grooveWidth, f: v.fingerWidth }),
    {
      label: 'finger left above the bottom’s groove',
      kind: 'length',
      round: 'down',
      rule: 'groove-inside-one-finger',
      when: (v) => v.joint === 'finger' && hasBottomGroove(v),
    },
  ),
  grooveStop: row(corner.grooveStop, (v) => ({ t: v.wall, g: v.grooveDepth }), {
    label: 'stopped groove: distance from the end',
    kind: 'length',
    when: hasBottomGroove,
    rule: 'groove-inside-one-finger',
  }),
};
