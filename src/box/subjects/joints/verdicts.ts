/** Checks on the area and the tails of a corner, taught by the lesson on joint spacing. */
import type { Check } from '../../core/verdict.ts';
import { fingersChecks } from './fingers.ts';
import type { JointsValues } from './results.ts';
import { tailsAndKeysChecks } from './tails-and-keys.ts';

/** What gives a corner more long grain, for the joint it has. */
const strongerBy = ({ joint }: JointsValues) =>
  joint === 'finger'
    ? 'use narrower fingers'
    : joint === 'mitre'
      ? 'add keys or a spline'
      : 'choose a joint with fingers or keys';

/** A tail at its root is as narrow as a finger may be: half the wall. That it holds for tails is this notebook's choice. */
const neck = (
  id: string,
  label: string,
  applies: (v: JointsValues) => boolean,
  of: 'tailRoot' | 'lidTailRoot',
): Check<JointsValues> => ({
  id,
  rule: 'finger-width',
  label,
  kind: 'length',
  applies,
  of,
  usual: (v) => [v.wall / 2, Number.POSITIVE_INFINITY],
  works: () => [0, Number.POSITIVE_INFINITY],
  says: {
    low: 'A neck finer than half the wall breaks off in the making: fewer tails, narrower pins, or more height.',
    breaks: 'The pins meet: no wood is left at the root of the tails.',
    high: '',
    inside: 'Half the wall or more at the root.',
  },
});

export const jointsChecks: readonly Check<JointsValues>[] = [
  neck('finger-width-tail', 'tail of a dovetail at its root', (v) => v.joint === 'dovetail', 'tailRoot'),
  neck(
    'finger-width-tail-lid',
    'tail of the lid’s dovetails at its root',
    (v) => v.joint === 'dovetail' && v.kind === 'lift-off',
    'lidTailRoot',
  ),
  {
    id: 'long-grain-to-long-grain',
    rule: 'long-grain-to-long-grain',
    label: 'long-grain glue area of a corner',
    kind: 'area',
    // What keys and splines add is not counted, so the rule keeps silent about them.
    applies: (v) => v.joint !== 'keyed-mitre' && v.joint !== 'splined-mitre',
    of: 'longGrainArea',
    // Half the end face of a wall: what fingers as wide as the wall is thick still reach.
    usual: (v) => [(v.jointedHeight * v.wall) / 2, Number.POSITIVE_INFINITY],
    says: (v) => ({
      low: `Mostly end grain is glued here. It soaks up glue and holds poorly: ${strongerBy(v)}, or let a glued plywood bottom hold the box.`,
      high: '',
      inside: 'Long grain lies on long grain, where glue holds best.',
    }),
  },
  ...fingersChecks,
  ...tailsAndKeysChecks,
];
