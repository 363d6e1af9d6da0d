/** The inputs of a part. Each control follows its own input; the list is made again only when other inputs come into force. */
import { useComputed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type ChoiceName, fields, type NumberName } from '../../box/subjects/inputs.ts';
import { Control } from '../kit/Control.tsx';
import type { Store } from '../kit/use-store.ts';
import { inputsIn, type PartOfBench } from './parts.ts';
import { RulerControl } from './RulerControl.tsx';
import type { KnownBands } from './use-bands.ts';

interface Props {
  part: PartOfBench;
  which: 'basic' | 'more';
  store: Store;
  known?: KnownBands | undefined;
}

const isNumber = (name: string): name is NumberName => fields[name as NumberName].type === 'number';

/** The wanted ratio moves nothing by itself: it stands with what it is for. */
const elsewhere: readonly string[] = ['wantedRatio'];

export function Controls({ part, which, store, known }: Props) {
  const names = useComputed(() =>
    inputsIn(part, which, store.values.value)
      .filter((name) => !elsewhere.includes(name))
      .join(),
  ).value;
  return useMemo(
    () => (
      <div class="controls">
        {names
          .split(',')
          .filter(Boolean)
          .map((name) =>
            isNumber(name) ? (
              <RulerControl key={name} name={name} store={store} known={known} />
            ) : (
              <Control key={name} name={name as ChoiceName} store={store} />
            ),
          )}
      </div>
    ),
    [names, store.values],
  );
}
