/** One question whose answers lie side by side; one of them is chosen, as with any radio buttons. */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Tile<Value> {
  readonly value: Value;
  readonly label: ComponentChildren;
  /** Quiet words below, or a drawing above. */
  readonly note?: ComponentChildren;
  readonly drawing?: ComponentChildren;
}

interface Props<Value> {
  question: string;
  number?: number;
  tiles: readonly Tile<Value>[];
  chosen: Value | undefined;
  choose: (value: Value) => void;
  /** Stands after the tiles. */
  children?: ComponentChildren;
}

export function Tiles<Value extends string>({
  question,
  number,
  tiles,
  chosen,
  choose,
  children,
}: Props<Value>) {
  const name = useId();
  return (
    <fieldset class="question">
      <legend>
        {number && <span class="question-number">{number}</span>} {question}
      </legend>
      <div class="answer-tiles">
        {tiles.map(({ value, label, note, drawing }) => (
          <label key={value} class="answer-tile">
            <input type="radio" name={name} checked={value === chosen} onChange={() => choose(value)} />
            {drawing}
            <span>{label}</span>
            {note && <small>{note}</small>}
          </label>
        ))}
      </div>
      {children}
    </fieldset>
  );
}
