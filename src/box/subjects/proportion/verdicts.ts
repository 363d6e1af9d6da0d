/** Checks that the proportion lesson teaches. */
import type { Check, Range } from '../../core/verdict.ts';
import type { ProportionValues } from './results.ts';
import type { RoomResults } from './room.ts';

const open = Number.POSITIVE_INFINITY;

/** Usual length to width: 3:2 to 9:5. Common practice; popular in Fechner's test of 1876 (table from memory). */
export const usualRatio: Range = [1.5, 1.8];

export const proportionChecks: readonly Check<ProportionValues & RoomResults>[] = [
  {
    id: 'design-from-the-inside',
    rule: 'design-from-the-inside',
    label: 'room on each side of the contents',
    kind: 'length',
    of: 'roomEachSide',
    usual: { mm: [3, 6], inch: [1 / 8, 1 / 4] },
    works: () => [0, open],
    says: {
      low: 'Fingers need room to lift the contents out.',
      breaks: 'The contents do not go in.',
      high: 'More room than usual: the contents may slide about.',
      inside: 'The contents go in, and fingers can take them out.',
    },
  },
  {
    id: 'design-from-the-inside-above',
    rule: 'design-from-the-inside',
    label: 'room above the contents',
    kind: 'length',
    of: 'roomOver',
    usual: { mm: [1, open], inch: [1 / 32, open] },
    works: () => [0, open],
    says: {
      low: 'The lid needs to clear the contents.',
      breaks: 'The lid meets the contents before it is shut.',
      high: '',
      inside: 'The lid clears the contents.',
    },
  },
  {
    id: 'linings-and-dividers-first',
    rule: 'linings-and-dividers-first',
    label: 'room left by lining and dividers',
    kind: 'length',
    applies: (v) => v.lining > 0 || v.dividersAcross > 0 || v.dividersAlong > 0,
    of: 'roomBeside',
    usual: { mm: [1, open], inch: [1 / 32, open] },
    works: () => [0, open],
    says: {
      low: 'Lining and dividers were not counted in: make the inside larger by what is missing.',
      high: '',
      inside: 'The contents still go in once it is lined and divided.',
    },
  },
  {
    id: 'outside-is-inside-plus-two-walls',
    rule: 'outside-is-inside-plus-two-walls',
    label: 'smallest inside size',
    kind: 'length',
    of: 'smallestInside',
    usual: () => [1, open],
    works: () => [1, open],
    says: {
      low: 'Walls, or bottom and lid, use up the whole outside.',
      high: '',
      inside: 'Two walls each way, and bottom and lid, leave an inside.',
    },
  },
  {
    id: 'simple-ratio',
    rule: 'simple-ratio',
    label: 'outside length to width',
    kind: 'ratio',
    of: 'longToShort',
    usual: usualRatio,
    says: {
      low: 'Nearer to square than the usual choice. Nothing breaks; let the contents decide.',
      high: 'Longer than the usual choice. Nothing breaks; let the contents decide.',
      inside: 'Between 3:2 and 9:5, a safe and usual choice.',
    },
  },
  {
    id: 'height-from-width',
    rule: 'height-from-width',
    label: 'outside height to width',
    kind: 'ratio',
    of: 'heightOfShorter',
    usual: [1 / 3, 1 / 2],
    says: {
      low: 'Flatter than the usual choice, like a tray. Nothing breaks.',
      high: 'Taller than the usual choice, like a tea caddy. Nothing breaks.',
      inside: 'Between a third and a half of the width, a usual choice.',
    },
  },
];
