/** Checks of the years after: the air of the day, in which a box is kept, fitted and planed, and whether a strip that quiets its lid stays right. */
import { practice } from '../../core/practice.ts';
import type { Check } from '../../core/verdict.ts';
import type { MovementValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;

export const careChecks: readonly Check<MovementValues>[] = [
  {
    id: 'care',
    rule: 'care',
    label: 'humidity today, where the box is',
    kind: 'percent',
    of: 'humidityToday',
    // 40 to 55 % is common practice, no source.
    usual: [40, 55],
    says: {
      low: 'Dry air for a box. What is planed or fitted now needs room for nearly the whole swing of the year.',
      high: 'Damp air for a box. If the lid sticks, let it dry before you plane it, and go by the number and not by the feel.',
      inside: 'Good air to keep a box in, and to plane a lid in.',
    },
  },
  {
    id: 'rattles-are-cured-in-thickness',
    rule: 'rattles-are-cured-in-thickness',
    label: 'movement of the lid’s edge in its thickness over the year',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.kind === 'sliding' && v.lid === 'solid',
    of: 'lidThicknessYear',
    // Half of the slip that a lid is given: to call that the limit is this notebook's choice.
    usual: { mm: [-open, practice.lidSlip / 2], inch: [-open, 0.006] },
    unknown: 'The tables have no figure for this wood in this air, so there is no number to judge.',
    says: {
      low: '',
      high: 'So thick an edge uses up half of its slip over the year or more: a strip that is right today may bind in damp air.',
      inside: 'So little that a strip or felt of the right thickness stays right all year.',
    },
  },
];
