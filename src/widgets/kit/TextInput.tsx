/** A text field whose half typed text stays, whatever is drawn again around it. */
import { useSignal } from '@preact/signals';
import type { InputHTMLAttributes } from 'preact';

interface Props extends Omit<InputHTMLAttributes, 'value'> {
  value: string;
  /** Takes the text once it is written. */
  set: (text: string) => void;
}

export function TextInput({ value, set, ...attributes }: Props) {
  const typed = useSignal<string | undefined>(undefined);
  return (
    <input
      {...attributes}
      type="text"
      value={typed.value ?? value}
      onInput={(event) => {
        typed.value = event.currentTarget.value;
      }}
      onChange={(event) => {
        typed.value = undefined;
        set(event.currentTarget.value);
      }}
      onBlur={() => {
        typed.value = undefined;
      }}
    />
  );
}
