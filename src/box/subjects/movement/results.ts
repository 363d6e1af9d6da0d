/**
 * What bottom and lid do in their grooves as the moisture of their wood (`air.ts`) goes through its year.
 *
 * Movement per point of moisture comes from the printed coefficient while both moisture contents lie within 6 to
 * 14 %, else from the total shrinkage; `methodSays` says which and why. A wood that allows neither gives NaN.
 * Over 150 lines: one table, whose rows share how a panel sits in its grooves.
 */

import type { Relation } from '../../../calc/core/relation.ts';
import { work } from '../../../calc/core/working.ts';
import { plywoodCoefficient, plywoodRange } from '../../../calc/movement/lengthwise.ts';
import * as movement from '../../../calc/movement/movement.ts';
import * as panel from '../../../calc/movement/panel.ts';
import * as play from '../../../calc/movement/panel-play.ts';
import * as repair from '../../../calc/movement/repair.ts';
import { INCH } from '../../../units/index.ts';
import { practice } from '../../core/practice.ts';
import { choiceOf, type Result, type ResultTable, rowsOf, type Say } from '../../core/result.ts';
import type { WaitValues } from '../air/wait.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';

export interface MovementResults {
  /** Fraction of the width per 1 % MC, for solid wood at the box's ring angle: from today up, and down. */
  readonly movementUp: number;
  readonly movementDown: number;
  /** What quarter-sawn wood of this kind saves of the movement of flat-sawn, %. */
  readonly quarterSawnSaving: number;
  /** What 100 mm of it, flat-sawn, move over 4 points, mm. */
  readonly hundredMoves: number;
  /** All in mm. The gap at each side that would do; the sizes to cut, and the play today that they leave across the grain. */
  readonly bottomGapNeeded: number;
  readonly bottomWidth: number;
  readonly bottomLength: number;
  readonly bottomPlayToday: number;
  readonly bottomSwelling: number;
  readonly bottomShrinking: number;
  /** Over the year, if it is free to. */
  readonly bottomSwing: number;
  /** Both sides together; below zero the bottom presses on its grooves. */
  readonly bottomPlayDamp: number;
  readonly bottomPlayDry: number;
  /** On the driest day: at each side while held central, and at the worse side once crept to the other. */
  readonly bottomEngagement: number;
  readonly bottomEngagementCrept: number;
  readonly lidPlayNeeded: number;
  readonly lidWidth: number;
  readonly lidLength: number;
  /** Of the lid's edge in its groove. */
  readonly lidTongue: number;
  /** How far that thickness moves over the year, solid wood, 6 to 14 % MC. */
  readonly lidThicknessYear: number;
  readonly lidPlayToday: number;
  readonly lidSwelling: number;
  readonly lidShrinking: number;
  readonly lidPlayDamp: number;
  readonly lidPlayDry: number;
  readonly lidEngagementCentral: number;
  readonly lidEngagement: number;
  /** Widest panel, mm, for which 1/16 in off its width is enough. */
  readonly widestForSixteenth: number;
}

export type MovementValues = WaitValues & SizeResults & MovementResults;
type V = MovementValues;
type Row = Result<V>;

/** What a saying of the trade takes off a panel, mm: one sixteenth of an inch. */
const sixteenth = INCH / 16;

/** Shrinkage of the width, %, at the ring angle. */
const widthShrinkage = (v: V) =>
  movement.movementOfWidth.compute({
    e_T: v.tangentialShrinkage,
    e_R: v.radialShrinkage,
    theta: v.ringAngle,
  });

const row = rowsOf<V>();
const choice = choiceOf<V>();
const holds = (v: V, then: number) => movement.coefficientHolds(v.moistureToday, then);

const perPoint = (label: string, then: (v: V) => number): Row =>
  choice(
    [movement.movementOfWidth, movement.perPointFromShrinkage],
    (v) =>
      holds(v, then(v))
        ? work(movement.movementOfWidth, {
            e_T: v.tangentialCoefficient,
            e_R: v.radialCoefficient,
            theta: v.ringAngle,
          })
        : work(movement.perPointFromShrinkage, { S: widthShrinkage(v), M_i: v.moistureToday }),
    { label, kind: 'number', rule: 'quarter-sawn-for-lids' },
  );

/** Plywood across its face grain; NaN where it was not measured. */
const plywood = (from: number, to: number) =>
  Math.min(from, to) >= plywoodRange[0] && Math.max(from, to) <= plywoodRange[1]
    ? plywoodCoefficient.across
    : Number.NaN;

export type PanelName = 'bottom' | 'lid';
const rise = (v: V) => v.moistureDamp - v.moistureToday;
const fall = (v: V) => v.moistureToday - v.moistureDry;
const slides = (v: V) => v.kind === 'sliding';
/** A glued bottom has no gap, whatever gap is typed. */
export const bottomFloats = (v: Pick<Box, 'bottomFit'>): boolean => v.bottomFit === 'floating';
const bottomGap = (v: V) => (bottomFloats(v) ? Math.max(0, v.bottomGap) : 0);
/** Free play to be left on the dampest day, both sides together: of a lid that slides, and of a panel held in four walls. */
const allowance = (part: PanelName, v: V) =>
  part === 'lid' && slides(v)
    ? panel.panelPractice.lidAllowance
    : 2 * panel.panelPractice.panelAllowancePerSide;
const grooveOf = (part: PanelName, v: V) => (part === 'bottom' ? v.grooveDepth : v.lidGrooveDepth);
/** Groove bottom to groove bottom, across the grain. */
const between = (part: PanelName, v: V) => v.insideWidth + 2 * grooveOf(part, v);
const widthOf = (part: PanelName, v: V) => (part === 'bottom' ? v.bottomWidth : v.lidWidth);
const playOf = (part: PanelName, v: V) => (part === 'bottom' ? v.bottomPlayToday : v.lidPlayToday);
const isPlywood = (part: PanelName, v: V) => v[part] === 'plywood';
const up = (part: PanelName, v: V) =>
  isPlywood(part, v) ? plywood(v.moistureToday, v.moistureDamp) : v.movementUp;
const down = (part: PanelName, v: V) =>
  isPlywood(part, v) ? plywood(v.moistureToday, v.moistureDry) : v.movementDown;

/** What is said of a length of that panel: a size to cut goes down, anything else is a small difference. */
const say = (part: PanelName, label: string, more: Partial<Say<V>> = {}): Say<V> => ({
  label,
  kind: 'length',
  ...(more.round === 'down' ? { as: 'size' } : { as: 'fine' }),
  rule: part === 'bottom' ? 'gap-beside-the-bottom' : 'lid-clearance',
  ...more,
});
const floats = { when: bottomFloats };

/** Change of size of a panel by the method that holds; plywood has one coefficient. */
const change = (part: PanelName, label: string, then: (v: V) => number, C: (v: V) => number): Row =>
  choice(
    [movement.changeByCoefficient, movement.changeByShrinkage],
    (v) => {
      const moisture = { D: widthOf(part, v), M_i: v.moistureToday, M_f: then(v) };
      return isPlywood(part, v) || holds(v, then(v))
        ? work(movement.changeByCoefficient, { ...moisture, C: C(v) })
        : work(movement.changeByShrinkage, { ...moisture, S: widthShrinkage(v) });
    },
    say(part, label),
  );

/** The gap or play that would do, reckoned for the width that leaves just that. */
const needed = (
  part: PanelName,
  of: Relation<'W' | 'C' | 'u' | 'c'>,
  label: string,
  more?: Partial<Say<V>>,
): Row =>
  row(
    of,
    (v) => {
      const given = { C: up(part, v), u: rise(v), c: allowance(part, v) };
      return { ...given, W: panel.widthToCut.compute({ ...given, B: between(part, v) }) };
    },
    say(part, label, { round: 'up', ...more }),
  );
const today = (part: PanelName, label: string, more?: Partial<Say<V>>): Row =>
  row(
    play.playBesideWidth,
    (v) => ({ B: between(part, v), W: widthOf(part, v) }),
    say(part, label, { round: 'up', builds: true, ...more }),
  );
const atDampest = (part: PanelName, label: string, more?: Partial<Say<V>>): Row =>
  row(
    play.playAtDampest,
    (v) => ({ p: playOf(part, v), W: widthOf(part, v), C: up(part, v), u: rise(v) }),
    say(part, label, more),
  );
/** What the driest day leaves: play, or hold in the groove. */
const dryInputs = (part: PanelName) => (v: V) => ({
  p: playOf(part, v),
  W: widthOf(part, v),
  C: down(part, v),
  f: fall(v),
});
const held = (
  part: PanelName,
  of: Relation<'g' | 'p' | 'W' | 'C' | 'f'>,
  label: string,
  more?: Partial<Say<V>>,
) => row(of, (v) => ({ ...dryInputs(part)(v), g: grooveOf(part, v) }), say(part, label, more));
const lengthAlong = (part: PanelName, v: V, room: number) =>
  ({ l: v.insideLength, g: grooveOf(part, v), e: room }) as const;
const cut = { round: 'down', builds: true } as const;
const engages = { rule: 'lid-engagement' };

export const movementResults: ResultTable<keyof MovementResults, V> = {
  movementUp: perPoint('movement per point of moisture, going up', (v) => v.moistureDamp),
  movementDown: perPoint('movement per point of moisture, going down', (v) => v.moistureDry),
  quarterSawnSaving: row(
    movement.quarterSawnSaving,
    (v) => ({ e_T: v.tangentialCoefficient, e_R: v.radialCoefficient }),
    {
      label: 'saved of the movement by quarter-sawn wood of this kind',
      kind: 'percent',
      digits: 0,
      rule: 'quarter-sawn-for-lids',
    },
  ),

  hundredMoves: row(
    movement.changeByCoefficient,
    (v) => ({ D: 100, C: v.tangentialCoefficient, M_i: 8, M_f: 12 }),
    {
      label: 'movement of 100 mm (4 in) of this wood, flat-sawn, over 4 points',
      kind: 'length',
      as: 'fine',
      rule: 'low-movement-wood-first',
    },
  ),
  bottomGapNeeded: needed('bottom', panel.gapPerSide, 'gap to leave at each side of the bottom', floats),
  bottomWidth: row(
    play.widthBesidePlay,
    (v) => ({ B: between('bottom', v), p: 2 * bottomGap(v) }),
    say('bottom', 'width of the bottom, with the gap you chose', cut),
  ),
  bottomLength: row(
    play.lengthInGrooves,
    (v) =>
      lengthAlong(
        'bottom',
        v,
        !bottomFloats(v) ? 0 : isPlywood('bottom', v) ? 2 * bottomGap(v) : practice.alongGrain,
      ),
    say('bottom', 'length of the bottom', cut),
  ),
  bottomPlayToday: today('bottom', 'play of the bottom today, both sides', floats),
  bottomSwelling: change(
    'bottom',
    'bottom, change from today to the dampest',
    (v) => v.moistureDamp,
    (v) => up('bottom', v),
  ),
  bottomShrinking: change(
    'bottom',
    'bottom, change from today to the driest',
    (v) => v.moistureDry,
    (v) => down('bottom', v),
  ),
  bottomSwing: row(
    movement.yearlySwing,
    (v) => ({ u: v.bottomSwelling, d: v.bottomShrinking }),
    say('bottom', 'movement of the bottom over the year', {
      builds: true,
      rule: 'solid-floats-plywood-may-be-glued',
    }),
  ),
  bottomPlayDamp: atDampest('bottom', 'play of the bottom at the dampest, both sides', floats),
  bottomPlayDry: row(
    panel.playAtDriest,
    dryInputs('bottom'),
    say('bottom', 'play of the bottom at the driest, both sides', floats),
  ),
  bottomEngagement: held(
    'bottom',
    panel.engagementCentral,
    'bottom held at the driest, central, each side',
    floats,
  ),
  bottomEngagementCrept: held(
    'bottom',
    panel.engagementCrept,
    'bottom held at the driest, crept, worse side',
    floats,
  ),

  lidPlayNeeded: needed('lid', panel.playToday, 'play to leave beside the lid, both sides together'),
  lidWidth: choice(
    [play.widthBesidePlay, panel.widthToCut],
    (v) => {
      const B = between('lid', v);
      if (slides(v)) return work(play.widthBesidePlay, { B, p: Math.max(0, v.lidPlay) });
      if (isPlywood('lid', v)) return work(play.widthBesidePlay, { B, p: 2 * practice.plywoodRoom });
      const needs = { C: v.movementUp, u: rise(v), c: allowance('lid', v) };
      // Without a figure for the wood or its air there is no gap to reckon: the allowance alone, and the verdict says so.
      return Number.isNaN(needs.C * needs.u)
        ? work(play.widthBesidePlay, { B, p: needs.c })
        : work(panel.widthToCut, { B, ...needs });
    },
    say('lid', 'width of the lid, with the play it is given', cut),
  ),
  lidLength: choice(
    [play.slidingLength, play.lengthInGrooves],
    (v) =>
      slides(v)
        ? work(play.slidingLength, { l: v.insideLength, t: v.wall, g: v.lidGrooveDepth })
        : work(
            play.lengthInGrooves,
            lengthAlong('lid', v, isPlywood('lid', v) ? 2 * practice.plywoodRoom : practice.alongGrain),
          ),
    say('lid', 'length of the lid’s panel', cut),
  ),
  lidTongue: row(
    play.thicknessInGroove,
    (v) => ({ d: v.lidThickness, s: practice.lidSlip }),
    say('lid', 'thickness of the lid’s edge in its groove', cut),
  ),
  lidThicknessYear: row(
    repair.thicknessOverYear,
    (v) => ({
      T: v.lidTongue,
      C_t: movement.movementOfThickness.compute({
        e_T: v.tangentialCoefficient,
        e_R: v.radialCoefficient,
        theta: v.ringAngle,
      }),
      M_d: v.moistureDry,
      M_w: v.moistureDamp,
    }),
    say('lid', 'movement of the lid’s edge in its thickness over the year', {
      rule: 'rattles-are-cured-in-thickness',
      when: (v) => !isPlywood('lid', v),
    }),
  ),
  lidPlayToday: today('lid', 'play of the lid today, both sides'),
  lidSwelling: change(
    'lid',
    'lid, change from today to the dampest',
    (v) => v.moistureDamp,
    (v) => up('lid', v),
  ),
  lidShrinking: change(
    'lid',
    'lid, change from today to the driest',
    (v) => v.moistureDry,
    (v) => down('lid', v),
  ),
  lidPlayDamp: atDampest('lid', 'play of the lid at the dampest, both sides'),
  lidPlayDry: row(
    panel.playAtDriest,
    dryInputs('lid'),
    say('lid', 'play of the lid at the driest, both sides', engages),
  ),
  lidEngagementCentral: held(
    'lid',
    panel.engagementCentral,
    'lid held at the driest, central, each side',
    engages,
  ),
  lidEngagement: held('lid', panel.engagementCrept, 'lid held at the driest, worse side', engages),
  widestForSixteenth: row(
    panel.widestForAllowance,
    (v) => ({ T: sixteenth, C: v.movementUp, u: rise(v), c: 2 * panel.panelPractice.panelAllowancePerSide }),
    {
      label: 'widest panel for which 1/16 in off is enough',
      kind: 'length',
      digits: 0,
      denominator: 8,
      round: 'down',
      rule: 'gap-beside-the-bottom',
    },
  ),
};
