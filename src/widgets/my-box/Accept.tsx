/** The way to leave a rule on purpose: the reader's reason, which goes onto the build sheet. */
import { useId } from 'preact/hooks';
import { fields } from '../../box/subjects/inputs.ts';
import { TextInput } from '../kit/TextInput.tsx';
import type { Store } from '../kit/use-store.ts';

export function Accept({ check, store }: { check: string; store: Store }) {
  const id = useId();
  const { accepted } = store.values.value;
  const accept = (text: string) => {
    const { [check]: _old, ...others } = accepted;
    store.set({ accepted: text ? { ...others, [check]: text } : others });
  };
  return (
    <p class="accept">
      <label for={id}>I know; because</label>{' '}
      <TextInput
        id={id}
        maxLength={fields.accepted.longest}
        value={accepted[check] ?? ''}
        placeholder="your reason goes onto the build sheet"
        set={(text) => accept(text.trim())}
      />
    </p>
  );
}
