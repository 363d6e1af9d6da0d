/**
 * What a widget works on: the current box, or the current box with some values pinned by a lesson.
 *
 * Pages are built with the example. In its first render a widget must show the example too, or it would not
 * match the page it wakes up in; after that it follows the reader's box.
 */
import { type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { exampleBox } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { compute, type Model, modelOf } from '../../box/subjects/model.ts';
import type { Values } from '../../box/whole/index.ts';
import { change, currentBox, loadBox } from '../../notebook/current.ts';
import { units } from '../../notebook/units.ts';
import type { UnitSystem } from '../../units/index.ts';
import { useNear } from './follow.ts';

export interface Store {
  /** Put it on the widget's element: what is far off the screen waits until it is near, so that a slider moves only what is seen. */
  readonly ref: RefObject<HTMLElement>;
  readonly values: ReadonlySignal<Values>;
  readonly units: ReadonlySignal<UnitSystem>;
  /** What differs from the reader's box, while a lesson pins values. */
  readonly pinned: ReadonlySignal<Partial<Box> | undefined>;
  readonly set: (inputs: Partial<Box>) => void;
  /** Drops the pinned values: the widget shows the reader's box. */
  readonly useMine: () => void;
  /** Copies the pinned values, as they stand, into the reader's box. */
  readonly putInMine: () => void;
}

/** Of nothing but the box itself and the figures of its wood. */
const bare = modelOf();

/**
 * @param model what is computed: the results of one subject, or of the whole box
 * @param pins inputs that a lesson fixes for its own figure; the reader may move them without touching their box
 */
export function useStore({ results }: Model = bare, pins?: Partial<Box>): Store {
  const live = useSignal(false);
  useEffect(() => {
    loadBox();
    live.value = true;
  }, []);
  const pinned = useSignal<Partial<Box> | undefined>(pins);
  const { ref, near } = useNear();
  const last = useRef<Values>();
  const values = useComputed(() => {
    if (!near.value && last.current) return last.current;
    last.current = compute(results, { ...(live.value ? currentBox.value : exampleBox), ...pinned.value });
    return last.current;
  });
  const system = useComputed<UnitSystem>(() => (live.value ? units.value : 'mm'));
  return {
    ref,
    values,
    units: system,
    pinned,
    set: (inputs) => {
      if (pinned.value) pinned.value = { ...pinned.value, ...inputs };
      else change(inputs);
    },
    useMine: () => {
      pinned.value = undefined;
    },
    putInMine: () => {
      if (pinned.value) change(pinned.value);
      pinned.value = undefined;
    },
  };
}
