/** Sizes of a part that can be typed in directly; below each, what gave way when it was. */
import { useComputed, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type GivenSize, givenSizes, giveSize } from '../../box/design/given-size.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import type { Store } from '../kit/use-store.ts';
import { DirectNumber } from './DirectNumber.tsx';
import type { PartOfBench } from './parts.ts';

const ofPart: Partial<Readonly<Record<PartOfBench, readonly GivenSize[]>>> = {
  inside: ['clearLength', 'clearWidth', 'insideHeight'],
  walls: ['outsideLength', 'outsideWidth', 'outsideHeight'],
  lid: ['lidWidth'],
};

/** Sizes of a part that can be given; inside, those that are wanted there already have an input of their own. */
export const givenIn = (part: PartOfBench, sizeFrom: string): readonly GivenSize[] =>
  part === 'inside' && sizeFrom === 'inside' ? [] : (ofPart[part] ?? []);

export function GivenSizes({ part, store }: { part: PartOfBench; store: Store }) {
  // What was typed stays where it is, with the words on what gave way, until another part is taken.
  const names = useMemo(() => givenIn(part, store.values.peek().sizeFrom), [part, store]);
  return (
    <div class="controls">
      {names.map((name) => (
        <OneSize key={name} name={name} store={store} />
      ))}
    </div>
  );
}

/** Larger or smaller than any size of a box, mm: the limits of the box itself are told with their reason. */
const [least, most] = [1, 1000];

function OneSize({ name, store }: { name: GivenSize; store: Store }) {
  const value = useComputed(() => store.values.value[name]).value;
  const given = useSignal<{ value: number; says: string } | undefined>(undefined);
  return (
    <DirectNumber
      label={givenSizes[name].label}
      kind="length"
      value={value}
      low={least}
      high={most}
      system={store.units.value}
      set={(size) => {
        const found = giveSize(store.values.peek(), name, size);
        if (isRefused(found)) return found.refused;
        store.set(found.inputs);
        given.value = { value: size, says: found.says };
        return undefined;
      }}
    >
      {given.value && Math.abs(given.value.value - value) < 0.01 && (
        <span role="status">{given.value.says}</span>
      )}
    </DirectNumber>
  );
}
