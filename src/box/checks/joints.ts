/** Checks that the lesson on joint spacing teaches. Ranges are common practice unless said otherwise. */
import type { Values } from '../values.ts';
import type { Check } from '../verdict.ts';

const isFinger = (v: Values) => v.joint === 'finger';

export const jointsChecks: readonly Check[] = [
  {
    rule: 'long-grain-to-long-grain',
    label: 'long-grain glue area of a corner',
    kind: 'area',
    // What keys and splines add is not counted, so the rule keeps silent about them.
    applies: (v) => !Number.isNaN(v.longGrainArea),
    measure: (v) => v.longGrainArea,
    // Half the end face of a wall: what fingers as wide as the wall is thick still reach.
    usual: (v) => [(v.jointedHeight * v.wall) / 2, Number.POSITIVE_INFINITY],
    says: {
      low: 'Mostly end grain is glued here. It soaks up glue and holds poorly: add keys, use narrower fingers, or let a glued plywood bottom hold the box.',
      high: '',
      inside: 'Long grain lies on long grain, where glue holds best.',
    },
  },
  {
    rule: 'finger-width',
    label: 'finger width',
    kind: 'length',
    applies: isFinger,
    measure: (v) => v.fingerWidth,
    usual: (v) => [v.wall / 2, v.wall],
    says: {
      low: 'Finer than half the wall: more glue area, but more cuts and more steps that can be off.',
      high: 'Wider than the wall is thick: little glue area, and past twice the wall a finger can cup away.',
      inside: 'Between half the wall’s thickness and the whole of it.',
    },
  },
  {
    rule: 'odd-finger-count',
    label: 'fingers in the height',
    kind: 'number',
    applies: isFinger,
    measure: (v) => v.fingerCount,
    usual: (v) => [v.oddCount, v.oddCount],
    says: {
      low: 'Not a whole odd number: top and bottom edge will differ. A little less height or a narrower cutter brings it out.',
      high: 'Not a whole odd number: top and bottom edge will differ. A little more height or a wider cutter brings it out.',
      inside: 'Whole and odd: both edges of a wall look alike, and it can be turned end for end.',
    },
  },
  {
    rule: 'no-sliver-at-the-edge',
    label: 'left at the far edge',
    kind: 'length',
    applies: isFinger,
    measure: (v) => v.edgeSliver,
    usual: () => [Number.NEGATIVE_INFINITY, 0],
    says: {
      low: '',
      high: 'A part of a finger stands at the edge; the thinner it is, the easier it splits away along the grain.',
      inside: 'The last finger is a whole one.',
    },
  },
  {
    rule: 'finger-fit',
    label: 'slot minus finger',
    kind: 'length',
    digits: 2,
    applies: isFinger,
    measure: (v) => v.fingerFit,
    usual: () => [0.05, 0.1],
    // Beyond it the glue film is thicker than 0.15 mm on each cheek (glue lines of 0.05 to 0.15 mm: from memory).
    works: () => [0, 0.3],
    says: {
      low: 'The glue’s water swells the fingers, and a joint that is tight when dry can seize half open.',
      high: 'Looser than a sheet of paper: the gaps show and the glue has to fill them.',
      inside: 'Slides home by hand and leaves room for a film of glue.',
    },
  },
  {
    rule: 'step-error-adds-up',
    label: 'step error, all steps together',
    kind: 'length',
    digits: 2,
    applies: isFinger,
    measure: (v) => v.addedStepError,
    usual: (v) => [0, v.fingerFit],
    says: {
      low: '',
      high: 'Cut on two settings, these walls bind before they close. Cut both on one setting, with the same marked edge first.',
      inside: 'Even between walls cut on two settings this is less than the play of a finger.',
    },
  },
];
