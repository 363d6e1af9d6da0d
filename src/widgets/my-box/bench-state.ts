/** What the reader looks at on the bench: the part, how the box stands, and from where it is seen. */
import { batch, type Signal, signal } from '@preact/signals';
import type { Pose } from '../../figures/box/poses.ts';
import type { PartOfBench } from './parts.ts';

export interface Bench {
  readonly part: Signal<PartOfBench>;
  readonly pose: Signal<Pose>;
  /** Degrees from the usual view. */
  readonly turn: Signal<number>;
  readonly tip: Signal<number>;
}

/** How the box stands for a part to be seen. */
export const poseFor: Readonly<Record<PartOfBench, Pose>> = {
  inside: 'lid off',
  walls: 'closed',
  corners: 'closed',
  grooves: 'apart',
  bottom: 'lid off',
  lid: 'open',
  air: 'closed',
  board: 'apart',
  accuracy: 'closed',
};

export const newBench = (part: PartOfBench): Bench => ({
  part: signal(part),
  pose: signal(poseFor[part]),
  turn: signal(0),
  tip: signal(0),
});

export function choosePart({ part, pose }: Bench, chosen: PartOfBench): void {
  batch(() => {
    part.value = chosen;
    pose.value = poseFor[chosen];
  });
}

/** Degrees of one step. */
const steps = { turn: 30, tip: 15 } as const;
/** The eye is never lower or higher than this, degrees above the table; the usual view is from 35°. */
const heights = [-30, 75] as const;
const usualHeight = 35;

export const turnBy = ({ turn }: Bench, count: number, step: number = steps.turn): void => {
  turn.value = ((((turn.value + count * step + 180) % 360) + 360) % 360) - 180;
};

export const tipBy = ({ tip }: Bench, count: number, step: number = steps.tip): void => {
  tip.value = Math.min(
    heights[1] - usualHeight,
    Math.max(heights[0] - usualHeight, tip.value + count * step),
  );
};
