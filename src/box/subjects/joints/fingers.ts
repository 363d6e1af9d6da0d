/** Checks on fingers, taught by the lesson on joint spacing. Ranges are common practice unless said otherwise. */

import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import { frontCutsFingers } from './corners.ts';
import type { JointsValues } from './results.ts';

const none: NativeRange = { mm: [Number.NEGATIVE_INFINITY, 0], inch: [Number.NEGATIVE_INFINITY, 0] };
/** Together no more than the play, and no more than this however wide the play is. */
const mostStepError: NativeRange = {
  mm: [Number.NEGATIVE_INFINITY, 0.25],
  inch: [Number.NEGATIVE_INFINITY, 0.01],
};

const isFinger = (v: JointsValues) => v.joint === 'finger';
const lidIsFinger = (v: JointsValues) => isFinger(v) && v.kind === 'lift-off';

/** What brings out an odd number: the odd number wanted says whether the walls must be higher or lower. */
function offOdd(height: number, odd: number, width: number) {
  const grow = odd * width > height;
  return {
    low: `Not a whole odd number: top and bottom edge will differ. ${grow ? 'A little more height or a narrower cutter brings it out.' : 'A little less height or a wider cutter brings it out.'}`,
    high: `Not a whole odd number: top and bottom edge will differ. ${grow ? 'A little more height or a narrower cutter brings it out.' : 'A little less height or a wider cutter brings it out.'}`,
    inside: 'Whole and odd: both edges of a wall look alike, and it can be turned end for end.',
  };
}

export const fingersChecks: readonly Check<JointsValues>[] = [
  {
    id: 'finger-width',
    rule: 'finger-width',
    label: 'finger width',
    kind: 'length',
    applies: isFinger,
    of: 'fingerWidth',
    declares: { mm: [5, 10], inch: [3 / 16, 3 / 8] },
    usual: (v) => [v.wall / 2, v.wall],
    says: {
      low: 'Finer than half the wall: more glue area, but more cuts and more steps that can be off.',
      high: 'Wider than the wall is thick: little glue area, and past twice the wall a finger can cup away.',
      inside: 'Between half the wall’s thickness and the whole of it.',
    },
  },
  {
    id: 'odd-finger-count',
    rule: 'odd-finger-count',
    label: 'fingers in the height',
    kind: 'number',
    applies: isFinger,
    of: 'fingerCount',
    usual: (v) => [v.oddCount, v.oddCount],
    says: (v) => offOdd(v.jointedHeight, v.oddCount, v.fingerWidth),
  },
  {
    id: 'no-sliver-at-the-edge',
    rule: 'no-sliver-at-the-edge',
    label: 'left at the far edge',
    kind: 'length',
    applies: isFinger,
    as: 'fine',
    of: 'edgeSliver',
    usual: none,
    says: {
      low: '',
      high: 'A part of a finger stands at the edge; the thinner it is, the easier it splits away along the grain.',
      inside: 'The last finger is a whole one.',
    },
  },
  {
    id: 'odd-finger-count-lid',
    rule: 'odd-finger-count',
    label: 'fingers in the height of the lid’s walls',
    kind: 'number',
    applies: lidIsFinger,
    of: 'lidFingerCount',
    usual: (v) => [v.lidOddCount, v.lidOddCount],
    says: (v) => offOdd(v.lidHeight, v.lidOddCount, v.fingerWidth),
  },
  {
    id: 'no-sliver-at-the-edge-lid',
    rule: 'no-sliver-at-the-edge',
    label: 'left at the far edge of the lid’s walls',
    kind: 'length',
    applies: lidIsFinger,
    as: 'fine',
    of: 'lidEdgeSliver',
    usual: none,
    says: {
      low: '',
      high: 'A part of a finger stands at the edge of the lid’s walls, where it splits away easily.',
      inside: 'The last finger of the lid’s walls is a whole one.',
    },
  },
  {
    id: 'front-ends-with-a-finger',
    rule: 'front-ends-with-a-finger',
    label: 'hole in each side above the lowered front',
    kind: 'length',
    applies: frontCutsFingers,
    of: 'frontHole',
    usual: none,
    says: {
      low: '',
      high: 'The front ends inside one of its own fingers, so the socket for it stays open above: choose a height or a finger that ends with the front, or fill the hole.',
      inside: 'The front ends where a finger ends, or inside one of the sides’: no hole stays above it.',
    },
  },
  {
    id: 'finger-fit',
    rule: 'finger-fit',
    label: 'slot minus finger',
    kind: 'length',
    as: 'fine',
    applies: isFinger,
    of: 'fingerFit',
    usual: { mm: [0.05, 0.1], inch: [0.002, 0.004] },
    // Beyond it the glue film is thicker than 0.15 mm on each cheek (glue lines of 0.05 to 0.15 mm: from memory).
    works: () => [0, 0.3],
    says: {
      low: 'The glue’s water swells the fingers, and a joint that is tight when dry can seize half open.',
      high: 'Looser than a sheet of paper: the gaps show and the glue has to fill them.',
      inside: 'Slides home by hand and leaves room for a film of glue.',
    },
  },
  {
    id: 'step-error-adds-up',
    rule: 'step-error-adds-up',
    label: 'step error, all steps together',
    kind: 'length',
    as: 'fine',
    applies: isFinger,
    of: 'addedStepError',
    declares: mostStepError,
    usual: (v) => [0, Math.min(v.fingerFit, eitherWay(mostStepError)[1])],
    says: {
      low: '',
      high: 'Cut on two settings, these walls bind before they close. Cut both on one setting, with the same marked edge first.',
      inside: 'Even between walls cut on two settings this is less than the play of a finger.',
    },
  },
];
