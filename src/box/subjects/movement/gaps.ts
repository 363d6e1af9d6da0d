/** Checks on the gaps of bottom and lid, taught by the lesson on wood movement. */
import { panelPractice } from '../../../calc/movement/panel.ts';
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import type { MovementValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;
/** A fit is loose where it has more than its rule's range, and more than a quarter over what this wood needs: the quarter is this notebook's choice. */
const loose = (range: NativeRange, needed: number) => Math.max(eitherWay(range)[1], 1.25 * needed);
const gapRange: NativeRange = { mm: [0.5, 1.6], inch: [1 / 32, 1 / 16] };
const playRange: NativeRange = { mm: [0.5, 1.5], inch: [1 / 32, 1 / 16] };

const floats = (v: MovementValues) => v.bottomFit === 'floating' && v.bottomSeat === 'groove';
const slides = (v: MovementValues) => v.kind === 'sliding';

/** Why a number of the year is missing. */
const unknown = 'The tables have no figure for this wood in this air, so there is no number to judge.';
const check = (of: Check<MovementValues>): Check<MovementValues> => ({ unknown, ...of });

export const gapsChecks: readonly Check<MovementValues>[] = [
  check({
    id: 'gap-beside-the-bottom',
    rule: 'gap-beside-the-bottom',
    label: 'gap beside the bottom, each side',
    kind: 'length',
    as: 'fine',
    applies: floats,
    of: 'bottomGap',
    declares: gapRange,
    usual: (v) => [v.bottomGapNeeded, loose(gapRange, v.bottomGapNeeded)],
    works: (v) => [v.bottomSwelling / 2, open],
    says: {
      low: 'On the dampest day the bottom fills its grooves; with less still, it pushes the corners open.',
      breaks: 'On the dampest day the bottom is wider than its grooves allow: it pushes the corners open.',
      high: 'More than this wood needs: the less of it is left in its groove on the driest day.',
      inside: 'On the dampest day the bottom is still free.',
    },
  }),
  check({
    id: 'gap-beside-the-bottom-central',
    rule: 'gap-beside-the-bottom',
    label: 'bottom held on the driest day, central',
    kind: 'length',
    as: 'fine',
    applies: floats,
    of: 'bottomEngagement',
    usual: { mm: [panelPractice.panelEngagement, open], inch: [1 / 8, open] },
    works: () => [0, open],
    says: {
      low: 'Little wood is left in the groove on the driest day. Cut it deeper, or turn the rings.',
      breaks: 'On the driest day it is out of both grooves.',
      high: '',
      inside: 'Enough of it stays in both grooves.',
    },
  }),
  check({
    id: 'gap-beside-the-bottom-crept',
    rule: 'gap-beside-the-bottom',
    label: 'bottom held on the driest day, crept to one side',
    kind: 'length',
    as: 'fine',
    applies: floats,
    of: 'bottomEngagementCrept',
    usual: { mm: [panelPractice.panelEngagementCrept, open], inch: [1 / 16, open] },
    works: () => [0, open],
    says: {
      low: 'Once it has crept aside it barely holds. Fix it at the middle of its end-grain edges.',
      breaks:
        'Once it has crept aside it is out of its groove on the driest day. Cut the groove deeper, or fix the bottom at the middle of its end-grain edges.',
      high: '',
      inside: 'Even crept to one side it stays in.',
    },
  }),
  check({
    id: 'lid-clearance',
    rule: 'lid-clearance',
    label: 'play beside the lid, both sides',
    kind: 'length',
    as: 'fine',
    applies: slides,
    of: 'lidPlay',
    declares: playRange,
    usual: (v) => [v.lidPlayNeeded, loose(playRange, v.lidPlayNeeded)],
    works: (v) => [v.lidSwelling, open],
    says: {
      low: 'The lid drags in damp air, and with less still it jams.',
      breaks: 'On the dampest day the lid is wider than its grooves allow: it jams.',
      high: 'More than this wood needs: the lid rattles, and turns further before it runs.',
      inside: 'It still runs on the dampest day.',
    },
  }),
  check({
    id: 'lid-engagement',
    rule: 'lid-engagement',
    label: 'lid held on the driest day, worse side',
    kind: 'length',
    as: 'fine',
    applies: slides,
    of: 'lidEngagement',
    usual: { mm: [panelPractice.lidEngagement, open], inch: [3 / 32, open] },
    works: () => [0, open],
    says: {
      low: 'Pushed to one side in dry air, little of the lid is left in its groove.',
      breaks: 'Pushed to one side in dry air, the lid slips out of its groove.',
      high: '',
      inside: 'Pushed to one side in dry air, it still holds.',
    },
  }),
];
