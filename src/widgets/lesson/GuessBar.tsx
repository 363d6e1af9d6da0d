/** A guess that is a mark in the drawing: the drawing with its handle, and below it the field, the two buttons or the answer. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { markOf, skipped } from '../../notebook/predictions.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useTypedNumber } from '../kit/use-typed-number.ts';
import { compared } from './compared.ts';
import { Answer, type BarProps, InSystem } from './guess-parts.tsx';
import { type NumberGuess, valuesOfGuess } from './guess-spec.ts';
import { MarkHandle } from './MarkHandle.tsx';
import { useSheets } from './use-sheets.ts';

export function GuessBar(bar: BarProps<NumberGuess>) {
  const { spec, model, awake, open, kept, fresh, store, commit, cover } = bar;
  const { field } = spec;
  const sheets = useSheets(spec, awake);
  const id = useId();
  const system = store.units.value;
  /** As the guess began, whatever is moved afterwards. */
  const first = valuesOfGuess(spec, model, system);
  const mark = useSignal<number | undefined>(undefined);
  const message = useSignal('');
  const earlier = markOf(kept, field.low, field.high);
  const shown = open ? earlier : mark.value;
  const start = spec.start(first);
  const set = (value: number) => {
    message.value = '';
    mark.value = value;
    return undefined;
  };
  useEffect(() => {
    if (!open) mark.value = undefined;
  }, [open]);
  const number = useTypedNumber({ ...field, value: mark.value ?? start, system, set });
  const take = async () => {
    if (!(await number.readNow())) return;
    if (mark.value === undefined) message.value = 'Set it first. If you think nothing moves, type 0.';
    else commit(String(mark.value));
  };
  const words = number.message ?? message.value;
  const truth = spec.truth(first, system);
  return (
    <form
      class="guess-form"
      onSubmit={(event) => {
        event.preventDefault();
        void take();
      }}
    >
      {sheets.map(({ className, figure: Figure, frame }) => (
        <div key={className} class={`guess-sheet ${className} ${fresh ? 'fresh' : ''}`}>
          <InSystem bar={bar}>
            {(values, one) => <Figure values={values} system={one} mark={shown} open={open} />}
          </InSystem>
          {!open && awake && (
            <MarkHandle
              {...field}
              frame={frame}
              label={`${spec.label}, in the drawing`}
              step={(system === 'inch' && field.inchStep) || field.step}
              value={mark.value ?? start}
              blank={mark.value === undefined}
              system={system}
              set={(value) => {
                number.drop();
                set(value);
              }}
              commit={() => void take()}
            />
          )}
        </div>
      ))}
      {open ? (
        <Answer key="answer" cover={cover}>
          {earlier !== undefined && kept !== skipped && (
            <>
              You said <Quantity value={earlier} kind={field.kind} digits={field.digits} />.{' '}
            </>
          )}
          {spec.answer(first, system)} {earlier !== undefined && compared(earlier, truth)}
        </Answer>
      ) : (
        <div key="bar" class="guess-bar">
          <p class="guess-field">
            <label for={id}>
              {spec.label}
              <HeardUnit kind={field.kind} />
            </label>{' '}
            <input
              {...number.input}
              value={
                mark.value === undefined && number.input.value === number.inForce ? '' : number.input.value
              }
              id={id}
              aria-describedby={`${id}m`}
            />{' '}
            <Unit kind={field.kind} />
          </p>
          <p class="print-only">My guess ____________</p>
          <button type="button" class="link" onClick={() => commit(skipped)}>
            just show me
          </button>
          <button type="submit">{spec.event}</button>
          <p class="message" id={`${id}m`} role="status">
            {words}
          </p>
        </div>
      )}
    </form>
  );
}
