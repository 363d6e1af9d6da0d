/** The name of the box, to change on the sheet that carries it. */
import { useId } from 'preact/hooks';
import { fields } from '../../box/subjects/inputs.ts';
import { TextInput } from '../kit/TextInput.tsx';
import type { Store } from '../kit/use-store.ts';

export function NameOnSheet({ store }: { store: Store }) {
  const id = useId();
  const { name: now } = store.values.value;
  return (
    <p class="screen-only">
      <label for={id}>
        Name on this sheet{' '}
        <TextInput
          id={id}
          maxLength={fields.name.longest}
          value={now}
          set={(name) => store.set({ name: name.trim() || now })}
        />
      </label>
    </p>
  );
}
