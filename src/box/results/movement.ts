/**
 * What bottom and lid do in their grooves as the moisture of their wood (`air.ts`) goes through its year.
 *
 * Movement per point of moisture comes from the printed coefficient while both moisture contents lie within 6 to
 * 14 %, else from the total shrinkage; `methodWords` says which and why. A wood that allows neither gives NaN.
 * Over 150 lines: one table, whose rows share how a panel sits in its grooves.
 */
import { plywoodCoefficient, plywoodRange } from '../../calc/lengthwise.ts';
import * as movement from '../../calc/movement.ts';
import * as panel from '../../calc/panel.ts';
import * as play from '../../calc/panel-play.ts';
import type { Box } from '../box.ts';
import type { Choice, Result, ResultTable } from '../result.ts';
import type { AirResults } from './air.ts';
import type { SizeResults } from './sizes.ts';
import type { WoodFigures } from './wood.ts';

export interface MovementResults {
  /** Fraction of the width per 1 % MC, for solid wood at the box's ring angle: from today up, and down. */
  readonly movementUp: number;
  readonly movementDown: number;
  /** All in mm. The gap at each side that would do; the width that leaves the gap chosen. */
  readonly bottomGapNeeded: number;
  readonly bottomWidth: number;
  readonly bottomSwelling: number;
  readonly bottomShrinking: number;
  /** Both sides together; below zero the bottom presses on its grooves. */
  readonly bottomPlayDamp: number;
  /** On the driest day: at each side while held central, and at the worse side once crept to the other. */
  readonly bottomEngagement: number;
  readonly bottomEngagementCrept: number;
  readonly lidPlayNeeded: number;
  readonly lidWidth: number;
  readonly lidSwelling: number;
  readonly lidShrinking: number;
  readonly lidPlayDamp: number;
  readonly lidPlayDry: number;
  readonly lidEngagement: number;
  /** Widest panel, mm, for which 1/16 in off its width is enough. */
  readonly widestForSixteenth: number;
}

export type MovementValues = Box & SizeResults & WoodFigures & AirResults & MovementResults;
type V = MovementValues;
type Row = Result<V>;

/** What a saying of the trade takes off a panel, mm: one sixteenth of an inch. */
export const sixteenth = 25.4 / 16;

/** Shrinkage of the width, %, at the ring angle. */
const widthShrinkage = (v: V) =>
  movement.movementOfWidth.compute({
    e_T: v.tangentialShrinkage,
    e_R: v.radialShrinkage,
    theta: v.ringAngle,
  });

const byRange = (then: (v: V) => number, inside: Choice<V>['among'][0], outside: Choice<V>['among'][0]) => ({
  among: [inside, outside],
  choose: (v: V) => (movement.coefficientHolds(v.moistureToday, then(v)) ? inside : outside),
});

const perPoint = (label: string, then: (v: V) => number): Row => ({
  label,
  kind: 'number',
  relation: byRange(then, movement.movementOfWidth, movement.perPointFromShrinkage),
  given: (v) => ({
    e_T: v.tangentialCoefficient,
    e_R: v.radialCoefficient,
    theta: v.ringAngle,
    S: widthShrinkage(v),
    M_i: v.moistureToday,
  }),
  rule: 'quarter-sawn-for-lids',
});

/** Plywood across its face grain; NaN where it was not measured. */
const plywood = (from: number, to: number) =>
  Math.min(from, to) >= plywoodRange[0] && Math.max(from, to) <= plywoodRange[1]
    ? plywoodCoefficient.across
    : Number.NaN;

/** One panel of the box between its two grooves. `p` is its play today, both sides together. */
const panels = {
  bottom: { sheet: 'bottom', g: 'grooveDepth', c: 2 * panel.panelPractice.panelAllowancePerSide },
  lid: { sheet: 'lid', g: 'lidGrooveDepth', c: panel.panelPractice.lidAllowance },
} as const;
const rise = (v: V) => v.moistureDamp - v.moistureToday;
const fall = (v: V) => v.moistureToday - v.moistureDry;

function settingOf(part: keyof typeof panels, v: V) {
  const { sheet, g: depth, c } = panels[part];
  const g = v[depth];
  const isPlywood = v[sheet] === 'plywood';
  return {
    B: v.insideWidth + 2 * g,
    g,
    c,
    p: part === 'bottom' ? 2 * v.bottomGap : v.lidPlay,
    W: part === 'bottom' ? v.bottomWidth : v.lidWidth,
    u: rise(v),
    f: fall(v),
    up: isPlywood ? plywood(v.moistureToday, v.moistureDamp) : v.movementUp,
    down: isPlywood ? plywood(v.moistureToday, v.moistureDry) : v.movementDown,
    isPlywood,
  };
}

type Setting = ReturnType<typeof settingOf>;
const length = (
  part: keyof typeof panels,
  label: string,
  relation: Row['relation'],
  given: (setting: Setting, v: V) => Readonly<Record<string, number>>,
  round: Row['round'] = 'nearest',
  rule = part === 'bottom' ? 'gap-beside-the-bottom' : 'lid-clearance',
): Row => ({
  label,
  kind: 'length',
  digits: round === 'down' ? 1 : 2,
  denominator: 64,
  round,
  relation,
  given: (v) => given(settingOf(part, v), v),
  rule,
});

/** Change of size of a panel by the method that holds; plywood has one coefficient. */
const change = (part: 'bottom' | 'lid', label: string, then: (v: V) => number, C: 'up' | 'down'): Row => {
  const solid = byRange(then, movement.changeByCoefficient, movement.changeByShrinkage);
  return length(
    part,
    label,
    {
      among: solid.among,
      choose: (v) => (v[panels[part].sheet] === 'plywood' ? movement.changeByCoefficient : solid.choose(v)),
    },
    (s, v) => ({ D: s.W, C: s[C], S: widthShrinkage(v), M_i: v.moistureToday, M_f: then(v) }),
  );
};
const toDamp = (v: V) => v.moistureDamp;
const toDry = (v: V) => v.moistureDry;
/** Width that leaves just what is needed: what the gap is reckoned for. */
const widthNeeded = ({ B, up, u, c }: Setting) => panel.widthToCut.compute({ B, C: up, u, c });

export const movementResults: ResultTable<keyof MovementResults, V> = {
  movementUp: perPoint('movement per point of moisture, going up', toDamp),
  movementDown: perPoint('movement per point of moisture, going down', toDry),

  bottomGapNeeded: length(
    'bottom',
    'gap to leave at each side of the bottom',
    panel.gapPerSide,
    (s) => ({ W: widthNeeded(s), C: s.up, u: s.u, c: s.c }),
    'up',
  ),
  bottomWidth: length(
    'bottom',
    'bottom, width to cut',
    play.widthBesidePlay,
    ({ B, p }) => ({ B, p }),
    'down',
  ),
  bottomSwelling: change('bottom', 'bottom, change from today to the dampest', toDamp, 'up'),
  bottomShrinking: change('bottom', 'bottom, change from today to the driest', toDry, 'down'),
  bottomPlayDamp: length(
    'bottom',
    'play of the bottom at the dampest, both sides',
    play.playAtDampest,
    ({ p, W, up, u }) => ({ p, W, C: up, u }),
  ),
  bottomEngagement: length(
    'bottom',
    'bottom held at the driest, central, each side',
    panel.engagementCentral,
    ({ g, p, W, down, f }) => ({ g, p, W, C: down, f }),
  ),
  bottomEngagementCrept: length(
    'bottom',
    'bottom held at the driest, crept, worse side',
    panel.engagementCrept,
    ({ g, p, W, down, f }) => ({ g, p, W, C: down, f }),
  ),

  lidPlayNeeded: length(
    'lid',
    'play to leave beside the lid, both sides together',
    panel.playToday,
    (s) => ({ W: widthNeeded(s), C: s.up, u: s.u, c: s.c }),
    'up',
  ),
  lidWidth: length('lid', 'lid, width to cut', play.widthBesidePlay, ({ B, p }) => ({ B, p }), 'down'),
  lidSwelling: change('lid', 'lid, change from today to the dampest', toDamp, 'up'),
  lidShrinking: change('lid', 'lid, change from today to the driest', toDry, 'down'),
  lidPlayDamp: length(
    'lid',
    'play of the lid at the dampest, both sides',
    play.playAtDampest,
    ({ p, W, up, u }) => ({ p, W, C: up, u }),
  ),
  lidPlayDry: length(
    'lid',
    'play of the lid at the driest, both sides',
    panel.playAtDriest,
    ({ p, W, down, f }) => ({ p, W, C: down, f }),
    'nearest',
    'lid-engagement',
  ),
  lidEngagement: length(
    'lid',
    'lid held at the driest, worse side',
    panel.engagementCrept,
    ({ g, p, W, down, f }) => ({ g, p, W, C: down, f }),
    'nearest',
    'lid-engagement',
  ),
  widestForSixteenth: {
    label: 'widest panel for which 1/16 in off is enough',
    kind: 'length',
    digits: 0,
    denominator: 8,
    round: 'down',
    relation: panel.widestForAllowance,
    given: (v) => ({ T: sixteenth, C: v.movementUp, u: rise(v), c: panels.bottom.c }),
    rule: 'gap-beside-the-bottom',
  },
};
