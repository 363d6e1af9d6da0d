/** Checks on walls, diagonals and twist. Ranges are common practice. */
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import type { SquareValues } from './results.ts';

const low = Number.NEGATIVE_INFINITY;
/** The order of work names the same two: what to aim at, and what is still accepted. */
export const diagonalsAim: NativeRange = { mm: [low, 0.5], inch: [low, 1 / 64] };
export const diagonalsMost: NativeRange = { mm: [low, 1], inch: [low, 1 / 32] };
export const rockMost: NativeRange = { mm: [low, 0.2], inch: [low, 0.008] };
/** Half of the accepted rock comes off at each of two corners. */
const rimMost: NativeRange = { mm: [low, 0.1], inch: [low, 0.004] };

export const squareChecks: readonly Check<SquareValues>[] = [
  {
    id: 'check-blade-and-fence',
    rule: 'check-blade-and-fence',
    label: 'error of the saw’s angle',
    kind: 'angle',
    digits: 2,
    of: 'angleError',
    usual: { mm: [low, 0.1], inch: [low, 0.1] },
    says: {
      low: '',
      high: 'Set blade and fence before the first wall: every end repeats this error.',
      inside: 'The saw is as square as walls of this size ask for.',
    },
  },
  {
    id: 'opposite-walls-from-one-stop',
    rule: 'opposite-walls-from-one-stop',
    label: 'opposite walls apart at worst, each cut to its own mark',
    kind: 'length',
    as: 'fine',
    of: 'wallsApart',
    usual: { mm: [low, 0.1], inch: [low, 0.005] },
    says: {
      low: '',
      high: 'Cut opposite walls against one stop: then they share its error. No clamp makes unequal walls square.',
      inside: 'Even cut to two marks, opposite walls come out alike.',
    },
  },
  {
    id: 'diagonals',
    rule: 'diagonals',
    label: 'diagonals apart, as measured',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.diagonalsApart > 0,
    of: 'diagonalsApart',
    usual: diagonalsAim,
    works: () => eitherWay(diagonalsMost),
    says: {
      low: '',
      high: 'Still accepted. While the glue is wet, squeeze the longer one until half of this is gone, and measure again.',
      breaks:
        'Out of square. Squeeze the longer diagonal while the glue is wet; if it does not give, opposite walls are not equal.',
      inside: 'As square as the eye and a lid ask for.',
    },
  },
  {
    id: 'twist',
    rule: 'twist',
    label: 'rock on a flat plate, as measured',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.rock > 0,
    of: 'rock',
    usual: rockMost,
    says: {
      low: '',
      high: 'It rocks, and a flat lid touches at two corners. Press it flat while the glue is wet; later, rub the rim on abrasive on a flat plate.',
      inside: 'It stands still enough.',
    },
  },
  {
    id: 'sand-the-rim-flat',
    rule: 'sand-the-rim-flat',
    label: 'comes off at two corners to make the rim flat',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.rock > 0,
    of: 'rimLoss',
    usual: rimMost,
    says: {
      low: '',
      high: 'That is much to rub off, and the groove of the lid does not come along: look at the wood left above it first. Feet, one of them shorter, spare the rim.',
      inside: 'A little rubbing on the plate makes it flat, and the rim stays level with its grooves.',
    },
  },
];
