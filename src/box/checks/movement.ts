/** Checks that the lesson on wood movement teaches. A box whose wood has no figure for its air is not judged. */
import { panelPractice } from '../../calc/panel.ts';
import type { Values } from '../values.ts';
import type { Check } from '../verdict.ts';

const open = Number.POSITIVE_INFINITY;
/** Narrow enough, mm, for a solid panel to be left flat-sawn or glued, quarter-sawn: common practice, no source. */
const narrow = 75;
/** Movement per point, as a fraction, up to which a wood counts as calm: common practice, no source. */
const calm = 0.003;

const floats = (v: Values) => v.bottomFit === 'floating' && v.bottomSeat === 'groove';
const slides = (v: Values) => v.kind === 'sliding';
const swing = (v: Values) => v.moistureDamp - v.moistureDry;
const glued = (v: Values) => v.bottomSwelling - v.bottomShrinking;

/** A check that stays silent where its number or its range is not known. */
const check = (of: Check): Check => ({
  ...of,
  applies: (v) => (of.applies?.(v) ?? true) && ![of.measure(v), ...of.usual(v)].some(Number.isNaN),
});

export const movementChecks: readonly Check[] = [
  check({
    rule: 'low-movement-wood-first',
    label: 'movement of 100 mm (4 in) of this wood, flat-sawn, over 4 points',
    kind: 'length',
    measure: (v) => 100 * 4 * v.tangentialCoefficient,
    usual: () => [-open, 100 * 4 * calm],
    says: {
      low: '',
      high: 'A lively wood. It is no mistake, but every gap must be calculated.',
      inside: 'A calm wood: small gaps are enough.',
    },
  }),
  check({
    rule: 'quarter-sawn-for-lids',
    label: 'growth rings to the face of the lid',
    kind: 'angle',
    applies: (v) => slides(v) && v.lid === 'solid' && v.lidWidth > narrow,
    measure: (v) => v.ringAngle,
    usual: () => [30, 90],
    says: {
      low: 'Flat-sawn: it moves most and cups most. It works if the play is calculated and the groove deep enough.',
      high: '',
      inside: 'Rift or quarter-sawn: the lid moves less and stays flatter.',
    },
  }),
  check({
    rule: 'build-in-the-middle',
    label: 'moisture of the wood today',
    kind: 'percent',
    measure: (v) => v.moistureToday,
    usual: (v) => [v.moistureDry + swing(v) / 4, v.moistureDamp - swing(v) / 4],
    says: {
      low: 'The wood is near the driest of its year: almost all it will do is swell.',
      high: 'The wood is near the dampest of its year: almost all it will do is shrink.',
      inside: 'Near the middle of its year: it will swell and shrink by about as much.',
    },
  }),
  check({
    rule: 'solid-floats-plywood-may-be-glued',
    label: 'yearly movement of the glued bottom',
    kind: 'length',
    applies: (v) => v.bottomFit === 'glued',
    measure: glued,
    usual: (v) => [-open, narrow * v.radialCoefficient * swing(v)],
    says: {
      low: '',
      high: 'Glued all around, it must crack or push a corner open. How much a small joint survives is not published.',
      inside: 'So little that gluing it in is common practice.',
    },
  }),
  check({
    rule: 'gap-beside-the-bottom',
    label: 'gap beside the bottom, each side',
    kind: 'length',
    applies: floats,
    measure: (v) => v.bottomGap,
    usual: (v) => [v.bottomGapNeeded, open],
    works: (v) => [v.bottomSwelling / 2, open],
    says: {
      low: 'On the dampest day the bottom fills its grooves; with less still, it pushes the corners open.',
      high: '',
      inside: 'On the dampest day the bottom is still free.',
    },
  }),
  check({
    rule: 'gap-beside-the-bottom',
    label: 'bottom held on the driest day, central',
    kind: 'length',
    applies: floats,
    measure: (v) => v.bottomEngagement,
    usual: () => [panelPractice.panelEngagement, open],
    works: () => [0, open],
    says: {
      low: 'Little wood is left in the groove on the driest day. Cut it deeper, or turn the rings.',
      high: '',
      inside: 'Enough of it stays in both grooves.',
    },
  }),
  check({
    rule: 'gap-beside-the-bottom',
    label: 'bottom held on the driest day, crept to one side',
    kind: 'length',
    applies: floats,
    measure: (v) => v.bottomEngagementCrept,
    usual: () => [panelPractice.panelEngagementCrept, open],
    works: () => [0, open],
    says: {
      low: 'Once it has crept aside it barely holds. Fix it at the middle of its end-grain edges.',
      high: '',
      inside: 'Even crept to one side it stays in.',
    },
  }),
  check({
    rule: 'lid-clearance',
    label: 'play beside the lid, both sides',
    kind: 'length',
    applies: slides,
    measure: (v) => v.lidPlay,
    usual: (v) => [v.lidPlayNeeded, open],
    works: (v) => [v.lidSwelling, open],
    says: {
      low: 'The lid drags in damp air, and with less still it jams.',
      high: '',
      inside: 'It still runs on the dampest day.',
    },
  }),
  check({
    rule: 'lid-engagement',
    label: 'lid held on the driest day, worse side',
    kind: 'length',
    applies: slides,
    measure: (v) => v.lidEngagement,
    usual: () => [panelPractice.lidEngagement, open],
    works: () => [0, open],
    says: {
      low: 'Pushed to one side in dry air, the lid can slip out of its groove.',
      high: '',
      inside: 'Pushed to one side in dry air, it still holds.',
    },
  }),
];
