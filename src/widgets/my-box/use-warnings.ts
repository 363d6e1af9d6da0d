/**
 * The warnings of the box as they are shown: they come when the hand has rested for a moment, so that nothing moves under
 * it; a change that mends one is seen at once. What mends each is worked out after that.
 */
import { type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { isExample } from '../../box/subjects/example.ts';
import { verdicts } from '../../box/whole/index.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import type { UnitSystem } from '../../units/index.ts';
import { findMends, type Mends } from './find-mends.ts';
import type { KnownMends } from './known-mends.ts';
import { type Judged, judgedOf } from './warnings.ts';

/** How long the hand rests before new warnings come, ms. */
const rest = 700;

export interface ShownWarnings {
  /** As the box is now. */
  readonly live: ReadonlySignal<Judged>;
  /** As they are shown. */
  readonly shown: ReadonlySignal<Judged>;
  /** What mends each, by id, as far as it is known. */
  readonly mends: ReadonlySignal<Mends>;
  /** The next change is shown at once. */
  readonly hurry: () => void;
}

/**
 * @param known what mends the warnings of the example, worked out while the page is built
 * @param onChange called before the shown warnings change
 */
export function useWarnings(
  design: ReadonlySignal<Design>,
  units: ReadonlySignal<UnitSystem>,
  known: KnownMends,
  onChange: () => void,
): ShownWarnings {
  const live = useComputed(() => {
    const { values, refusals, box } = design.value;
    return judgedOf(verdicts(values), refusals, box.accepted);
  });
  const shown = useSignal(live.peek());
  const mends = useSignal<Mends>(new Map(Object.entries(known.mm)));
  const inHurry = useRef(false);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const show = (judged: Judged) => {
      inHurry.current = false;
      onChange();
      shown.value = judged;
    };
    shown.value = live.peek();
    const stop = live.subscribe((judged) => {
      clearTimeout(timer);
      if (judged === shown.peek()) return;
      if (inHurry.current) show(judged);
      else timer = setTimeout(() => show(judged), rest);
    });
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, []);
  useEffect(() => {
    let stopFinding = () => {};
    const stop = shown.subscribe(({ warnings }) => {
      stopFinding();
      const { box } = design.peek();
      const system = units.peek();
      const take = (found: Mends) => {
        onChange();
        mends.value = found;
      };
      if (isExample(box)) take(new Map(Object.entries(known[system])));
      else stopFinding = findMends(box, warnings, shownRulers.peek()[system], take);
    });
    return () => {
      stop();
      stopFinding();
    };
  }, []);
  return {
    live,
    shown,
    mends,
    hurry: () => {
      inHurry.current = true;
    },
  };
}
