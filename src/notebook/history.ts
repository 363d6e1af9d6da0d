/**
 * Undo and redo of the current box. Changes to the same input in quick succession (a slider drag) count as one step.
 * Kept in memory only: a step back is for the last minutes, a named design for later.
 */
import { computed, signal } from '@preact/signals';
import type { Box } from '../box/box.ts';

/** Changes closer together than this, to the same inputs, are one step. */
const pause = 1000;
const mostSteps = 200;

const past = signal<readonly Box[]>([]);
const future = signal<readonly Box[]>([]);
let last = { inputs: '', at: -Infinity };

export const canUndo = computed(() => past.value.length > 0);
export const canRedo = computed(() => future.value.length > 0);

/**
 * Remembers the box as it was before a change.
 * @param inputs names of the inputs that change
 * @param at time of the change, ms
 */
export function remember(before: Box, inputs: readonly string[], at: number): void {
  const name = inputs.join();
  const continues = name === last.inputs && at - last.at < pause && past.value.length > 0;
  last = { inputs: name, at };
  future.value = [];
  if (!continues) past.value = [...past.value.slice(1 - mostSteps), before];
}

/** The box one step back, or `undefined` at the beginning. */
export function stepBack(now: Box): Box | undefined {
  const before = past.value.at(-1);
  if (!before) return undefined;
  past.value = past.value.slice(0, -1);
  future.value = [now, ...future.value];
  last = { inputs: '', at: -Infinity };
  return before;
}

/** The box one step forward again, or `undefined` at the end. */
export function stepForward(now: Box): Box | undefined {
  const [after, ...rest] = future.value;
  if (!after) return undefined;
  future.value = rest;
  past.value = [...past.value, now];
  last = { inputs: '', at: -Infinity };
  return after;
}

/** Forgets all steps; for tests. */
export function forgetHistory(): void {
  past.value = [];
  future.value = [];
  last = { inputs: '', at: -Infinity };
}
