/**
 * Undo and redo of the current box. A step holds only the inputs that this tab changed, so taking it back leaves alone
 * what another tab has done meanwhile. Changes to the same input in quick succession (a slider drag) count as one step.
 * Kept in memory only: a step back is for the last minutes, a named design for later.
 */
import { computed, signal } from '@preact/signals';
import type { Box } from '../box/subjects/inputs.ts';

/** Changes closer together than this, to the same inputs, are one step. */
const pause = 1000;
const mostSteps = 200;

interface Step {
  readonly before: Partial<Box>;
  readonly after: Partial<Box>;
}

const past = signal<readonly Step[]>([]);
const future = signal<readonly Step[]>([]);
let last = { inputs: '', at: -Infinity };

export const canUndo = computed(() => past.value.length > 0);
export const canRedo = computed(() => future.value.length > 0);
/** The inputs that one step back takes back, as they were changed. */
export const lastStep = computed(() => Object.keys(past.value.at(-1)?.before ?? {}) as (keyof Box)[]);

/**
 * Remembers a change.
 * @param box as it was before
 * @param after the inputs that change, with their new values
 * @param at time of the change, ms
 */
export function remember(box: Box, after: Partial<Box>, at: number): void {
  const names = Object.keys(after) as (keyof Box)[];
  const inputs = names.join();
  const continues = inputs === last.inputs && at - last.at < pause && past.value.length > 0;
  last = { inputs, at };
  future.value = [];
  const before = continues
    ? past.value.at(-1)!.before
    : (Object.fromEntries(names.map((name) => [name, box[name]])) as Partial<Box>);
  past.value = [
    ...past.value.slice(continues ? 0 : 1 - mostSteps, continues ? -1 : undefined),
    { before, after },
  ];
}

/** The box one step back, or `undefined` at the beginning. */
export function stepBack(now: Box): Box | undefined {
  const step = past.value.at(-1);
  if (!step) return undefined;
  past.value = past.value.slice(0, -1);
  future.value = [step, ...future.value];
  last = { inputs: '', at: -Infinity };
  return { ...now, ...step.before };
}

/** The box one step forward again, or `undefined` at the end. */
export function stepForward(now: Box): Box | undefined {
  const [step, ...rest] = future.value;
  if (!step) return undefined;
  future.value = rest;
  past.value = [...past.value, step];
  last = { inputs: '', at: -Infinity };
  return { ...now, ...step.after };
}

/** Forgets all steps; for tests. */
export function forgetHistory(): void {
  past.value = [];
  future.value = [];
  last = { inputs: '', at: -Infinity };
}
