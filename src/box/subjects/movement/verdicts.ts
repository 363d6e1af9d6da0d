/** Checks that the lesson on wood movement teaches. A box whose wood has no figure for its air is not judged. */
import { panelPractice } from '../../../calc/movement/panel.ts';
import { format } from '../../../units/index.ts';
import type { Check } from '../../core/verdict.ts';
import { careChecks } from './care.ts';
import { gapsChecks } from './gaps.ts';
import type { MovementValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;

const slides = (v: MovementValues) => v.kind === 'sliding';
const swing = (v: MovementValues) => v.moistureDamp - v.moistureDry;

/** What turning the rings upright is worth in this wood. */
const saved = (v: MovementValues) =>
  Number.isNaN(v.quarterSawnSaving)
    ? ''
    : ` Quarter-sawn, this wood moves ${format(v.quarterSawnSaving, 'percent', { digits: 0, system: 'mm' })} less than flat-sawn.`;

/** Why a number of the year is missing. */
const unknown = 'The tables have no figure for this wood in this air, so there is no number to judge.';
const check = (of: Check<MovementValues>): Check<MovementValues> => ({ unknown, ...of });

export const movementChecks: readonly Check<MovementValues>[] = [
  check({
    id: 'low-movement-wood-first',
    rule: 'low-movement-wood-first',
    label: 'movement of 100 mm (4 in) of this wood, flat-sawn, over 4 points',
    kind: 'length',
    as: 'fine',
    of: 'hundredMoves',
    // Up to 0.3 % a point a wood counts as stable: common practice, no source.
    usual: { mm: [-open, 1.2], inch: [-open, 3 / 64] },
    says: {
      low: '',
      high: 'This wood moves a lot. It is no mistake, but the gaps grow with it.',
      inside: 'A stable wood: its gaps are small.',
    },
  }),
  check({
    id: 'quarter-sawn-for-lids',
    rule: 'quarter-sawn-for-lids',
    label: 'growth rings to the face of the lid',
    kind: 'angle',
    applies: (v) => slides(v) && v.lid === 'solid',
    of: 'ringAngle',
    usual: [45, 90],
    says: (v) => ({
      low: `Nearer to flat-sawn: it moves and cups more. It works if the play is calculated and the groove deep enough.${saved(v)}`,
      high: '',
      inside: `Nearer to quarter-sawn than to flat-sawn: the lid moves less and stays flatter.${saved(v)}`,
    }),
  }),
  check({
    id: 'build-in-the-middle',
    rule: 'build-in-the-middle',
    label: 'moisture of the wood today',
    kind: 'percent',
    of: 'moistureToday',
    usual: (v) => [v.moistureDry + swing(v) / 4, v.moistureDamp - swing(v) / 4],
    says: {
      low: 'The wood is near the driest of its year: almost all it will do is swell.',
      high: 'The wood is near the dampest of its year: almost all it will do is shrink.',
      inside: 'Near the middle of its year: it will swell and shrink by about as much.',
    },
  }),
  check({
    id: 'solid-floats-plywood-may-be-glued',
    rule: 'solid-floats-plywood-may-be-glued',
    label: 'yearly movement of the glued bottom',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.bottomFit === 'glued',
    of: 'bottomSwing',
    // The play that a sliding lid is left: to call that the limit is this notebook's choice.
    usual: { mm: [-open, panelPractice.lidAllowance], inch: [-open, 0.012] },
    says: {
      low: '',
      high: 'Glued all around, it must crack or push a corner open. How much a small joint survives is not published.',
      inside: 'So little that gluing it in is common practice.',
    },
  }),
  ...gapsChecks,
  ...careChecks,
];
