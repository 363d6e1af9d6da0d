/** What makes keys or splines in a miter impossible. */

import { practice } from '../../core/practice.ts';
import type { Values } from '../../whole/index.ts';
import { keyShare, mostKeys, splineSection } from '../joints/miter.ts';
import { plan } from '../plan.ts';
import { both, type Condition } from '../refusal.ts';
import { countWithin, positive } from './joint-inputs.ts';

const keyZone = (v: Values) => {
  const planned = plan(v);
  return planned ? planned.frontTop - planned.bottomBand.high : 0;
};
const keysThatFit = (v: Values) => Math.floor(keyZone(v) / (keyShare * v.keyThickness));
const splineFits = (v: Values) => {
  const planned = plan(v);
  return !planned || splineSection(planned) !== undefined;
};
/** Thickest spline beside the deeper groove. */
const thickestSpline = (v: Values) =>
  (v.wall - Math.max(v.grooveDepth, v.lidGrooveDepth)) * Math.SQRT2 -
  practice.rabbetBeyondGroove -
  2 * practice.splineLeast;

export const miterConditions: readonly Condition[] = [
  ...countWithin('keys', 'keyed-mitre', 'keyCount', 'keys', mostKeys),
  positive(
    'no-key',
    ['keyed-mitre', 'splined-mitre'],
    'keyThickness',
    'Keys and splines need a thickness.',
    2,
  ),
  {
    id: 'keys-do-not-fit',
    breaks: (v) =>
      v.joint === 'keyed-mitre' &&
      v.keyThickness > 0 &&
      keyZone(v) > 0 &&
      Math.round(v.keyCount) <= mostKeys &&
      keysThatFit(v) < Math.round(v.keyCount),
    what: (v) =>
      `${Math.round(v.keyCount)} keys of ${both(v.keyThickness)} do not fit between the grooves: ${both(keyZone(v))} are free.`,
    field: (v) => (keysThatFit(v) >= 1 ? 'keyCount' : 'keyThickness'),
    limit: 'most',
    to: (v) => {
      if (keysThatFit(v) >= 1) return keysThatFit(v);
      const thickness = keyZone(v) / (keyShare * Math.max(1, Math.round(v.keyCount)));
      return thickness >= 0.1 ? thickness : undefined;
    },
  },
  {
    id: 'spline-does-not-fit',
    breaks: (v) => v.joint === 'splined-mitre' && v.keyThickness > 0 && !splineFits(v),
    what: (v) =>
      `A spline of ${both(v.keyThickness)} has no room in the miter of a wall ${both(v.wall)} thick beside the grooves.`,
    field: () => 'keyThickness',
    limit: 'most',
    to: (v) => {
      const most = thickestSpline(v);
      return most >= 0.1 && v.wall * practice.splineShare >= practice.splineLeast ? most : undefined;
    },
  },
];
