/** Conditions that joints share: an input that must be positive, a count within bounds. */
import type { Values } from '../../whole/index.ts';
import type { Condition } from '../refusal.ts';

/** A size of the joint that must be more than nothing. */
export const positive = (
  id: string,
  joints: readonly Values['joint'][],
  field: 'fingerWidth' | 'pinWidth' | 'dovetailSlope' | 'keyThickness',
  what: string,
  to: number,
): Condition => ({
  id,
  breaks: (v) => joints.includes(v.joint) && !(v[field] >= 0.1),
  what: () => what,
  field: () => field,
  limit: 'least',
  to: () => to,
});

/** A count of at least one and at most `most`. */
export const countWithin = (
  id: string,
  joint: Values['joint'],
  field: 'tailCount' | 'keyCount',
  name: string,
  most: number,
): readonly Condition[] => [
  {
    id: `no-${id}`,
    breaks: (v) => v.joint === joint && !(Math.round(v[field]) >= 1),
    what: () => `The corner has no ${name}.`,
    field: () => field,
    limit: 'least',
    to: () => 1,
  },
  {
    id: `too-many-${id}`,
    breaks: (v) => v.joint === joint && Math.round(v[field]) > most,
    what: (v) => `${Math.round(v[field])} ${name} in one corner are more than this lays out.`,
    field: () => field,
    limit: 'most',
    to: () => most,
  },
];
