/** One question from an earlier lesson: choose, then read why. Without JavaScript the answer stands in a fold. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';

export interface Props {
  ask: string;
  options: readonly string[];
  right: number;
  because: string;
}

export function RecallQuestion({ ask, options, right, because }: Props) {
  const name = useId();
  const chosen = useSignal<number | undefined>(undefined);
  return (
    <fieldset class="recall">
      <legend>{ask}</legend>
      {options.map((option, index) => (
        <label key={option}>
          <input
            type="radio"
            name={name}
            onChange={() => {
              chosen.value = index;
            }}
          />
          {option}
        </label>
      ))}
      <p role="status">
        {chosen.value === undefined ? '' : chosen.value === right ? `Right. ${because}` : `No. ${because}`}
      </p>
      <noscript>
        <details>
          <summary>the answer</summary>
          {options[right]}. {because}
        </details>
      </noscript>
    </fieldset>
  );
}
