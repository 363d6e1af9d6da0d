/** Sets the outside by a ratio, when the reader asks: the length from the width, or the width from the length. */
import { useComputed } from '@preact/signals';
import { fields } from '../../box/subjects/inputs.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { NumberControl } from '../kit/Control.tsx';
import type { Store } from '../kit/use-store.ts';

export function ByRatio({ store }: { store: Store }) {
  const v = store.values.value;
  const system = useComputed(() => store.units.value).value;
  const outside = { sizeFrom: 'outside', wantedHeight: v.outsideHeight } as const;
  const fits = (value: number, name: 'wantedLength' | 'wantedWidth') =>
    value >= fields[name].low && value <= fields[name].high;
  return (
    <div class="by-ratio">
      <NumberControl
        field={fields.wantedRatio}
        value={v.wantedRatio}
        system={system}
        set={(wantedRatio) => store.set({ wantedRatio })}
      />
      <p class="buttons">
        {fits(v.lengthForRatio, 'wantedLength') && (
          <button
            type="button"
            class="quiet"
            onClick={() =>
              store.set({ ...outside, wantedLength: v.lengthForRatio, wantedWidth: v.outsideWidth })
            }
          >
            make the outside <Quantity value={v.lengthForRatio} kind="length" as="size" /> long for its width
          </button>
        )}
        {fits(v.widthForRatio, 'wantedWidth') && (
          <button
            type="button"
            class="quiet"
            onClick={() =>
              store.set({ ...outside, wantedLength: v.outsideLength, wantedWidth: v.widthForRatio })
            }
          >
            make it <Quantity value={v.widthForRatio} kind="length" as="size" /> wide for its length
          </button>
        )}
      </p>
    </div>
  );
}
