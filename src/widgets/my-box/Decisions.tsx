/** The inputs of one section. Each control follows its own input, and the list changes only when other inputs come into force. */
import { useComputed } from '@preact/signals';
import { memo } from 'preact/compat';
import type { Store } from '../../notebook/use-store.ts';
import { Control } from '../Control.tsx';
import { inputsFor, type Section } from './sections.ts';

type Input = Section['inputs'][number];

const One = memo(({ name, store }: { name: Input; store: Store }) => <Control name={name} store={store} />);

export function Decisions({ section, store }: { section: Section; store: Store }) {
  const names = useComputed(() => inputsFor(section, store.values.value).join());
  return (
    <div class="controls">
      {names.value.split(',').map((name) => (
        <One key={name} name={name as Input} store={store} />
      ))}
    </div>
  );
}
