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

/** Steps that go together, in the order in which they are done. */
export interface Stage {
  readonly title: string;
  readonly steps: readonly Step[];
}

export interface Work {
  readonly stages: readonly Stage[];
  /** Those of all stages. */
  readonly steps: readonly Step[];
  readonly setUps: readonly SetUp[];
  readonly gaps: Gaps;
  readonly amounts: Amounts;
}

/** Whether a box can be worked at at all. */
export const isPlanned = (design: Design): design is Planned =>
  design.plan !== undefined && design.corners.length > 0;

/** The work on this box; `undefined` where there is no room between four walls, so that nothing can be worked at. */
export function workOf(design: Design): Work | undefined {
  if (!isPlanned(design)) return undefined;
  const amounts = amountsOf(design);
  const onStrip = groovesOnStrip(design);
  const grooves = grooveSteps(design, onStrip);
  const front = frontStep(design);
  // Grooves on the strip come before the lengths, grooves on interlocking parts after the joints (common practice).
  // Dovetails are spaced over the front's own height; fingers run on past it and are cut off with the rest.
  const early = design.box.joint === 'dovetail';
  const stages = [
    { title: 'Wood', steps: [...stockSteps(design), ...(onStrip ? grooves : [])] },
    {
      title: 'Walls',
      steps: [
        ...lengthSteps(design),
        ...(early ? front : []),
        ...jointSteps(design),
        ...(onStrip ? [] : grooves),
        ...(early ? [] : front),
      ],
    },
    { title: 'Bottom and lid', steps: panelSteps(design) },
    { title: 'Glue', steps: glueSteps(design, amounts) },
    { title: 'Surface, and fitting the lid', steps: [...surfaceSteps(design, amounts), ...lidSteps(design)] },
  ].filter(({ steps }) => steps.length > 0);
  return {
    stages,
    steps: stages.flatMap(({ steps }) => steps),
    setUps: setUpsOf(design),
    gaps: gapsOf(design),
    amounts,
  };
}
