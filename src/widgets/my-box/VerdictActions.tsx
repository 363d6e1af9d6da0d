/** Under a verdict that is not usual: the smallest change that would satisfy the rule, and the way to accept it on purpose. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { printOf } from '../../box/core/field.ts';
import type { Verdict } from '../../box/core/verdict.ts';
import { type Change, smallestChanges } from '../../box/design/smallest-change.ts';
import type { Values } from '../../box/subjects/index.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Store } from '../kit/use-store.ts';
import { TextInput } from './TextInput.tsx';

interface Props {
  verdict: Verdict<Values>;
  store: Store;
  /** Called when a change was made: what was pressed goes. */
  onChanged: () => void;
}

export function VerdictActions({ verdict, store, onChanged }: Props) {
  const id = useId();
  const { id: check } = verdict.check;
  const changes = useSignal<Change[] | undefined>(undefined);
  const box = store.values.value;
  const reason = box.accepted[check];
  const accept = (text: string) => {
    const { [check]: _old, ...others } = box.accepted;
    store.set({ accepted: text ? { ...others, [check]: text } : others });
  };
  return (
    <div class="verdict-actions">
      <details
        onToggle={(event) => {
          if (event.currentTarget.open)
            changes.value = smallestChanges(box, verdict.check, store.units.value);
        }}
      >
        <summary>what would change it</summary>
        {changes.value?.length === 0 && <p>No single number does it without breaking something else.</p>}
        <ul>
          {changes.value?.map(({ input, to }) => (
            <li key={input}>
              {fields[input].label}{' '}
              <Quantity value={box[input]} kind={fields[input].kind} {...printOf(fields[input])} /> →{' '}
              <Quantity value={to} kind={fields[input].kind} {...printOf(fields[input])} />{' '}
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  onChanged();
                  store.set({ [input]: to });
                  changes.value = undefined;
                }}
              >
                change it
              </button>
            </li>
          ))}
        </ul>
      </details>
      <p class="accept">
        <label for={id}>I know; because</label>{' '}
        <TextInput
          id={id}
          maxLength={fields.accepted.longest}
          value={reason ?? ''}
          placeholder="your reason goes onto the build sheet"
          set={(text) => accept(text.trim())}
        />
      </p>
    </div>
  );
}
