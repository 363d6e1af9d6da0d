/** A guess among drawn outcomes: each is a drawing with its words, and the reader picks one. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { skipped } from '../../notebook/predictions.ts';
import { Answer, type BarProps, InSystem } from './guess-parts.tsx';
import { type PickGuess, valuesOfGuess } from './guess-spec.ts';

export function PickBar(bar: BarProps<PickGuess>) {
  const { spec, model, awake, open, kept, fresh, store, commit, cover } = bar;
  const { figure: Figure, option: Option } = spec;
  const name = useId();
  const picked = useSignal<string | undefined>(undefined);
  const message = useSignal('');
  useEffect(() => {
    if (!open) picked.value = undefined;
  }, [open]);
  const first = valuesOfGuess(spec, model, store.units.value);
  const right = spec.truth(first);
  const mine = open ? kept : picked.value;
  return (
    <form
      class="guess-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (picked.value === undefined) message.value = 'Pick one first, or let it be shown.';
        else commit(picked.value);
      }}
    >
      {Figure && (
        <div class={`guess-sheet ${fresh ? 'fresh' : ''}`}>
          <InSystem bar={bar}>
            {(values, system) => <Figure values={values} system={system} mark={undefined} open={open} />}
          </InSystem>
        </div>
      )}
      <fieldset class="outcomes">
        <legend>{spec.label}</legend>
        {Object.entries(spec.options).map(([option, words]) => (
          <label
            key={option}
            class={`outcome ${mine === option ? 'mine' : ''} ${open && option === right ? 'right' : ''}`}
          >
            <InSystem bar={bar}>
              {(values) => <Option values={values} option={option} open={open} />}
            </InSystem>
            <span>
              {/* Nothing can be picked before the page is awake, nor without JavaScript. */}
              <input
                type="radio"
                name={name}
                value={option}
                checked={mine === option}
                disabled={open || !awake}
                onChange={() => {
                  picked.value = option;
                  message.value = '';
                }}
              />
              {words}
            </span>
            {open && mine === option && <em class="tag">your pick</em>}
            {open && option === right && <strong class="tag">so it is</strong>}
          </label>
        ))}
      </fieldset>
      {open ? (
        <Answer key="answer" cover={cover}>
          {kept === skipped ? '' : kept === right ? 'As you said. ' : 'Not as you said. '}
          {spec.answer(first, store.units.value)}
        </Answer>
      ) : (
        <div key="bar" class="guess-bar">
          <p class="print-only">My guess ____________</p>
          <button type="button" class="link" onClick={() => commit(skipped)}>
            just show me
          </button>
          <button type="submit">{spec.event}</button>
          <p class="message" role="status">
            {message.value}
          </p>
        </div>
      )}
    </form>
  );
}
