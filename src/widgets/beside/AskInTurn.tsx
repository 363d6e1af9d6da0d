/** Questions one after another: choose, check, read why, and when it comes back. Fetched late, with the schedule. */
import { useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { addAnswer, answers, regrade } from '../../notebook/recall/answers.ts';
import { today, whenOf } from '../../notebook/recall/day.ts';
import { dueOn } from '../../notebook/recall/schedule.ts';
import { useLead } from '../kit/use-lead.ts';
import type { Question } from './words.ts';

export function AskInTurn({ questions }: { questions: readonly Question[] }) {
  const name = useId();
  const at = useSignal(0);
  const chosen = useSignal<number | undefined>(undefined);
  const checked = useSignal(false);
  const guessed = useSignal(false);
  const known = useSignal(0);
  const hint = useSignal('');
  const here = useRef<HTMLDivElement>(null);
  const lead = useLead();
  const question = questions[at.value];
  if (!question)
    return (
      <div class="ask-in-turn" ref={here}>
        <p class="recall-end" tabIndex={-1}>
          {known.value} of {questions.length} known. The answers are kept on this device.
        </p>
      </div>
    );
  const { id, order, title, ask, options, right, because } = question;
  const isRight = chosen.value === right;
  const check = () => {
    if (checked.peek()) return;
    if (chosen.value === undefined) {
      hint.value = 'Choose an answer first.';
      return;
    }
    hint.value = '';
    checked.value = true;
    if (isRight) known.value++;
    addAnswer(id, today(), isRight ? 'right' : 'wrong');
    lead(() => here.current?.querySelector<HTMLElement>('.next-question'));
  };
  const goOn = () => {
    at.value++;
    chosen.value = undefined;
    checked.value = false;
    guessed.value = false;
    lead(() => here.current?.querySelector<HTMLElement>('legend, .recall-end'));
  };
  const given = answers.value[id];
  return (
    <div class="ask-in-turn" ref={here}>
      <form
        class="recall"
        onSubmit={(event) => {
          event.preventDefault();
          check();
        }}
      >
        <p class="kicker">
          {at.value + 1} of {questions.length}, from lesson {order}: {title}
        </p>
        <fieldset>
          <legend tabIndex={-1}>{ask}</legend>
          {options.map((option, index) => (
            <label key={`${id} ${index}`}>
              <input
                type="radio"
                name={name}
                checked={chosen.value === index}
                disabled={checked.value}
                onChange={() => {
                  chosen.value = index;
                }}
              />
              {option}
              {checked.value && index === right && <b> ✓</b>}
            </label>
          ))}
        </fieldset>
        {!checked.value && (
          <p>
            <button type="submit">check</button>
          </p>
        )}
      </form>
      <div role="status">
        {hint.value && <p>{hint.value}</p>}
        {checked.value && (
          <>
            <p>
              <strong>{isRight ? 'Right.' : 'No.'}</strong> {!isRight && `It is: ${options[right]}. `}
              {because}
            </p>
            {given && <p class="recall-when">It comes again {whenOf(dueOn(given, today()), today())}.</p>}
          </>
        )}
      </div>
      {checked.value && (
        <p class="recall-on">
          <button type="button" class="next-question" onClick={goOn}>
            {at.value + 1 < questions.length ? 'next question' : 'done'}
          </button>
          {isRight && (
            <label>
              <input
                type="checkbox"
                checked={guessed.value}
                onChange={({ currentTarget }) => {
                  guessed.value = currentTarget.checked;
                  known.value += currentTarget.checked ? -1 : 1;
                  regrade(id, currentTarget.checked ? 'guessed' : 'right');
                }}
              />
              it was a guess
            </label>
          )}
        </p>
      )}
    </div>
  );
}
