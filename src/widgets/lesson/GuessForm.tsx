/**
 * Guess first: a number or a choice; then the result is uncovered. The guess can be skipped and is remembered.
 * The covered part is the sibling that `prose/Guess.astro` puts after this form; without JavaScript nothing is covered.
 * Over 150 lines, because the form before the guess and the answer after it share one state.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import { exampleBox } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { compute, type Model } from '../../box/subjects/model.ts';
import type { ResultName } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { guesses, loadGuesses, rememberGuess } from '../../notebook/predictions.ts';
import { units } from '../../notebook/units.ts';
import { fieldUnit } from '../../units/index.ts';
import { readNumber } from '../kit/read-number.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useLead } from '../kit/use-lead.ts';

export interface Props {
  /** Unique in the notebook: the guess is kept under it. */
  id: string;
  /** The question, in one sentence. */
  ask: string;
  /** For a number: which result, for the example with these inputs. */
  result?: ResultName;
  of?: Partial<Box>;
  /** How near counts as right, as a share of the answer. */
  within?: number;
  /** For a choice: what can be chosen, and which is right. */
  options?: readonly string[];
  answer?: string;
  /** One sentence said after the guess, right or wrong. */
  because: string;
}

export function GuessForm({ model, ...props }: Props & { model: Model }) {
  const { id, ask, options, answer, because } = props;
  const field = useId();
  const root = useRef<HTMLFormElement>(null);
  const text = useSignal('');
  const message = useSignal('');
  const near = useSignal(false);
  const state = useSignal<'asking' | 'guessed' | 'skipped'>('asking');

  const answerLine = useRef<HTMLParagraphElement>(null);
  const lead = useLead();
  /** The figure's heading, which nothing leads to but this. */
  const uncovered = () => {
    const figure = root.current
      ?.closest('.guess')
      ?.querySelector<HTMLElement>('.covered h2, .covered section');
    figure?.setAttribute('tabindex', '-1');
    return figure;
  };

  const open = (to: 'guessed' | 'skipped') => {
    state.value = to;
    root.current?.closest<HTMLElement>('.guess')?.setAttribute('data-open', 'true');
  };
  const wanted = props.result ? model.results[props.result] : undefined;
  const right = props.result
    ? compute(model.results, { ...exampleBox, ...props.of })[props.result]
    : undefined;
  /** Reads the guess and uncovers the figure, or says why it cannot be read. */
  const take = async (guess: string, remember: boolean) => {
    if (wanted && right !== undefined) {
      const read = await readNumber(guess, wanted.kind, units.value);
      if (!read.ok) {
        message.value = read.message;
        return;
      }
      near.value = Math.abs(read.value - right) <= Math.abs(right) * (props.within ?? 0.1);
      // Kept with its unit, so that it means the same after a change of units.
      if (remember)
        rememberGuess(
          id,
          /[a-z"'°%]/i.test(guess) ? guess : `${guess} ${fieldUnit(wanted.kind, units.value)}`,
        );
    } else {
      if (guess === '') {
        message.value = 'Choose one first, or skip.';
        return;
      }
      near.value = guess === answer;
      if (remember) rememberGuess(id, guess);
    }
    message.value = '';
    if (remember) lead(() => answerLine.current);
    open('guessed');
  };

  useEffect(() => {
    loadGuesses();
    const earlier = guesses.value[id];
    // What is being typed goes before what was guessed earlier.
    if (earlier !== undefined && text.value === '') {
      text.value = earlier;
      void take(earlier, false);
    }
  }, []);

  const commit = (event: Event) => {
    event.preventDefault();
    void take(text.value, true);
  };

  return (
    <form class="guess-form" ref={root} onSubmit={commit}>
      <p class="guess-title">Guess first</p>
      {options ? (
        <fieldset>
          <legend>{ask}</legend>
          {options.map((option) => (
            <label key={option}>
              <input
                type="radio"
                name={field}
                value={option}
                checked={text.value === option}
                disabled={state.value === 'guessed'}
                onChange={() => {
                  text.value = option;
                }}
              />
              {option}
            </label>
          ))}
        </fieldset>
      ) : (
        <p>
          <label for={field}>
            {ask}
            {wanted && <HeardUnit kind={wanted.kind} />}
          </label>{' '}
          <input
            id={field}
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={text.value}
            readOnly={state.value === 'guessed'}
            aria-invalid={message.value ? 'true' : undefined}
            aria-describedby={`${field}m`}
            onInput={(event) => {
              text.value = event.currentTarget.value;
            }}
          />{' '}
          {wanted && <Unit kind={wanted.kind} />}
        </p>
      )}
      <p class="message" id={`${field}m`} role="status">
        {message.value}
      </p>
      {state.value === 'guessed' ? (
        // Keys: a button drawn again as the submit button while it is being pressed would submit.
        <p key="answer" class="guess-answer" role="status" tabIndex={-1} ref={answerLine}>
          {near.value ? 'Right. ' : 'Not quite. '}
          {wanted && right !== undefined ? (
            <>
              It is{' '}
              <strong>
                <Quantity value={right} kind={wanted.kind} digits={wanted.digits} as={wanted.as} />
              </strong>
              .{' '}
            </>
          ) : (
            !near.value && `It is: ${answer}. `
          )}
          {because}{' '}
          <button
            type="button"
            onClick={() => {
              text.value = '';
              state.value = 'asking';
              lead(() => root.current?.querySelector('input'));
              root.current?.closest<HTMLElement>('.guess')?.setAttribute('data-open', 'false');
              rememberGuess(id, '');
            }}
          >
            guess again
          </button>
        </p>
      ) : (
        <p key="buttons" class="guess-buttons">
          <button type="submit">this is my guess</button>{' '}
          {state.value === 'asking' && (
            <button
              type="button"
              class="quiet"
              onClick={() => {
                lead(uncovered);
                open('skipped');
              }}
            >
              skip, show me
            </button>
          )}
        </p>
      )}
    </form>
  );
}
