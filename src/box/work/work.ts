/**
 * The work on a box as data: the order of steps, each with the check that belongs to it and the caution where it can
 * hurt; set-ups; gaps with the air they assume; glue, clamps and finish.
 */
import type { Design } from '../design/design.ts';
import { type Amounts, amountsOf } from './amounts.ts';
import { glueSteps } from './assembly-steps.ts';
import { frontStep, grooveSteps, jointSteps } from './corner-steps.ts';
import { type Gaps, gapsOf } from './gaps.ts';
import { lidSteps, surfaceSteps } from './last-steps.ts';
import { panelSteps } from './panel-steps.ts';
import { type SetUp, setUpsOf } from './set-ups.ts';
import { groovesOnStrip, type Planned, type Step } from './step.ts';
import { lengthSteps, stockSteps } from './stock-steps.ts';

export interface Work {
  readonly steps: readonly Step[];
  readonly setUps: readonly SetUp[];
  readonly gaps: Gaps;
  readonly amounts: Amounts;
}

const isPlanned = (design: Design): design is Planned =>
  design.plan !== undefined && design.corners.length > 0;

/** The work on this box; `undefined` where there is no room between four walls, so that nothing can be worked at. */
export function workOf(design: Design): Work | undefined {
  if (!isPlanned(design)) return undefined;
  const amounts = amountsOf(design);
  const onStrip = groovesOnStrip(design);
  const grooves = grooveSteps(design, onStrip);
  const front = frontStep(design);
  return {
    // Grooves on the strip come before the lengths, grooves on interlocking parts after the joints (common practice).
    steps: [
      ...stockSteps(design),
      ...(onStrip ? grooves : []),
      ...lengthSteps(design),
      // Dovetails are spaced over the front's own height; fingers run on past it and are cut off with the rest.
      ...(design.box.joint === 'dovetail' ? front : []),
      ...jointSteps(design),
      ...(onStrip ? [] : grooves),
      ...(design.box.joint === 'dovetail' ? [] : front),
      ...panelSteps(design),
      ...glueSteps(design, amounts),
      ...surfaceSteps(design, amounts),
      ...lidSteps(design),
    ],
    setUps: setUpsOf(design),
    gaps: gapsOf(design),
    amounts,
  };
}
