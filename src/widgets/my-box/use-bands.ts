/** The band of a number as it is shown: worked out in the worker once the hand has rested; what is known already needs no worker. */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Bands } from '../../box/design/bands.ts';
import { isExample } from '../../box/subjects/example.ts';
import { inputsOf, type NumberName } from '../../box/subjects/inputs.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import { Overtaken, reckon } from '../../notebook/reckoner/reckon.ts';
import { type UnitSystem, usualRuler } from '../../units/index.ts';
import type { Store } from '../kit/use-store.ts';

/** How long the hand rests before the band is asked for, ms. */
const rest = 250;

export interface ShownBands {
  /** Undefined until they are worked out; those of the box before stay meanwhile. */
  readonly bands?: Bands;
  /** Why they could not be. */
  readonly failed?: string;
}

/** Bands of the example on each reader's usual ruler, worked out while the page is built. */
export type KnownBands = Readonly<Record<UnitSystem, Readonly<Partial<Record<NumberName, Bands>>>>>;

export function useBands(name: NumberName, store: Store, known?: KnownBands): ReadonlySignal<ShownBands> {
  const first = known?.mm[name];
  const shown = useSignal<ShownBands>(first ? { bands: first } : {});
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let latest = 0;
    const ask = () => {
      const turn = ++latest;
      const box = inputsOf(store.values.peek());
      const system = store.units.peek();
      const ruler = shownRulers.peek()[system];
      const ready = ruler === usualRuler[system] && isExample(box) ? known?.[system][name] : undefined;
      if (ready) {
        shown.value = { bands: ready };
        return;
      }
      reckon({ ask: 'bands', of: name, box, ruler: ruler.name }).then(
        (bands) => {
          if (turn === latest) shown.value = { bands };
        },
        (why: Error) => {
          if (turn === latest && !(why instanceof Overtaken)) shown.value = { failed: why.message };
        },
      );
    };
    const wait = () => {
      clearTimeout(timer);
      timer = setTimeout(ask, rest);
    };
    const stops = [store.values.subscribe(wait), store.units.subscribe(wait), shownRulers.subscribe(wait)];
    return () => {
      for (const stop of stops) stop();
      clearTimeout(timer);
      latest++;
    };
  }, []);
  return shown;
}
