/** What makes fingers and dovetails impossible. */
import type { Values } from '../../whole/index.ts';
import { mostTails } from '../joints/dovetail.ts';
import { mostFingers } from '../joints/finger.ts';
import { type Plan, plan } from '../plan.ts';
import { both, type Condition } from '../refusal.ts';
import { countWithin, positive } from './joint-inputs.ts';

/** Heights of the ends that a joint has to fill: of the front, and of a lift-off lid. */
const endHeights = ({ values, height, rim, frontTop, sawn }: Plan) =>
  values.kind === 'sawn'
    ? [height + sawn]
    : values.kind === 'lift-off'
      ? [rim, height - rim]
      : [frontTop, height];
const lowest = (v: Values) => {
  const planned = plan(v);
  return planned ? Math.min(...endHeights(planned)) : 0;
};
const highest = (v: Values) => {
  const planned = plan(v);
  return planned ? Math.max(...endHeights(planned)) : 0;
};
/** Height that one tail takes at the least: a pin and both slopes. */
const tailNeeds = (v: Values) => v.pinWidth + (2 * v.wall) / v.dovetailSlope;
const positiveTails = (v: Values) => v.pinWidth > 0 && v.dovetailSlope > 0 && v.wall > 0;
/** Most tails that still leave a root. */
const tailsThatFit = (v: Values) => Math.min(mostTails, Math.ceil(lowest(v) / tailNeeds(v)) - 1);
export const jointConditions: readonly Condition[] = [
  positive('no-finger', ['finger'], 'fingerWidth', 'Fingers need a width.', 5),
  {
    id: 'too-many-fingers',
    breaks: (v) => v.joint === 'finger' && v.fingerWidth > 0 && highest(v) / v.fingerWidth > mostFingers,
    what: (v) => `Fingers of ${both(v.fingerWidth)} would be more than ${mostFingers} to a corner.`,
    field: () => 'fingerWidth',
    limit: 'least',
    to: (v) => highest(v) / 9,
  },
  {
    id: 'fingers-do-not-fit',
    breaks: (v) =>
      v.joint === 'finger' && v.fingerWidth > 0 && lowest(v) > 0 && lowest(v) <= v.fingerWidth + 1e-6,
    what: (v) =>
      `A finger of ${both(v.fingerWidth)} fills a wall ${both(lowest(v))} high: nothing is left to interlock.`,
    field: () => 'fingerWidth',
    limit: 'most',
    to: (v) => lowest(v) / 3,
  },
  {
    id: 'negative-fit',
    breaks: (v) => v.joint === 'finger' && v.fingerFit < 0,
    what: () => 'The fingers are wider than their slots.',
    field: () => 'fingerFit',
    limit: 'least',
    to: () => 0,
  },
  {
    id: 'fit-eats-finger',
    breaks: (v) => v.joint === 'finger' && v.fingerWidth > 0.2 && v.fingerFit >= v.fingerWidth,
    what: (v) => `Slots ${both(v.fingerFit)} wider than the fingers leave no finger.`,
    field: () => 'fingerFit',
    limit: 'most',
    to: () => 0.1,
  },

  ...countWithin('tails', 'dovetail', 'tailCount', 'tails', mostTails),
  positive('no-pin', ['dovetail'], 'pinWidth', 'Pins need a width at their narrow side.', 3),
  positive('no-slope', ['dovetail'], 'dovetailSlope', 'A dovetail without slope cannot be laid out.', 7),
  {
    id: 'tails-do-not-fit',
    breaks: (v) =>
      v.joint === 'dovetail' &&
      positiveTails(v) &&
      lowest(v) > 0 &&
      Math.round(v.tailCount) >= 1 &&
      Math.round(v.tailCount) <= mostTails &&
      lowest(v) / Math.round(v.tailCount) <= tailNeeds(v),
    what: (v) =>
      `${Math.round(v.tailCount)} tails in ${both(lowest(v))} leave no root: each needs more than ${both(tailNeeds(v))} for its pin and slopes.`,
    field: (v) => (tailsThatFit(v) >= 1 ? 'tailCount' : 'pinWidth'),
    limit: 'most',
    to: (v) => {
      if (tailsThatFit(v) >= 1) return tailsThatFit(v);
      const pin = (lowest(v) / Math.round(v.tailCount) - (2 * v.wall) / v.dovetailSlope) / 2;
      return pin >= 0.1 ? pin : undefined;
    },
  },
];
