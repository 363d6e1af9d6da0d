/** The inputs of one section. Each control follows its own input; the list is made again only when other inputs come into force. */
import { useComputed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Control } from '../kit/Control.tsx';
import type { Store } from '../kit/use-store.ts';
import { inputsFor, type Section } from './sections.ts';

export function Decisions({ section, store }: { section: Section; store: Store }) {
  const names = useComputed(() => inputsFor(section, store.values.value).join()).value;
  return useMemo(
    () => (
      <div class="controls">
        {names.split(',').map((name) => (
          <Control key={name} name={name as Section['inputs'][number]} store={store} />
        ))}
      </div>
    ),
    [names, store.values],
  );
}
