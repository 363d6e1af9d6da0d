/** The learner's own numbers: the question, the answers, and hints that give the next step, the answer last. */
import { useSignal } from '@preact/signals';
import type { Exercise } from '../../exercises/core/exercise.ts';
import { askedOf, firstStepTo, taskFor } from '../../exercises/core/task.ts';
import { keyText } from '../../exercises/core/written.ts';
import { addTry, type Member } from '../../notebook/learning/exercises.ts';
import type { UnitSystem } from '../../units/index.ts';
import { AskedField } from './AskedField.tsx';
import { type GivenFigure, GivenNumbers } from './GivenNumbers.tsx';

interface Props {
  exercise: Exercise;
  learner: Member;
  system: UnitSystem;
  figure?: GivenFigure | undefined;
}

export function OwnTask({ exercise, learner, system, figure }: Props) {
  const shown = useSignal(0);
  const reason = useSignal('');
  const kept = useSignal('');
  const task = taskFor(exercise, learner, system);
  const { lines } = task;
  const keep = (asked: string, entry: string, said: string, right: boolean) =>
    addTry({ ...learner, exercise: exercise.id, asked, entry, said, right });
  const all = shown.value > lines.length;
  return (
    <div class="own-task">
      <p class="kicker">
        Class {learner.className}, number {learner.number}
      </p>
      <GivenNumbers task={task} figure={figure} />
      {askedOf(task).map(({ gives }) => (
        <AskedField
          key={gives.label}
          asked={gives}
          system={system}
          begin={firstStepTo(
            task,
            lines.findIndex((line) => line.gives === gives),
          )}
          tried={(entry, said, right) => keep(gives.label, entry, said, right)}
        />
      ))}
      {task.reason && (
        <form
          class="asked"
          onSubmit={(event) => {
            event.preventDefault();
            if (reason.value.trim() === '') return;
            keep('reason', reason.value.trim().slice(0, 500), 'For your teacher.', false);
            kept.value = 'It stands among your tries, to be printed.';
          }}
        >
          <label>
            {task.reason}
            <textarea
              rows={3}
              maxLength={500}
              value={reason.value}
              onInput={(event) => {
                reason.value = event.currentTarget.value;
                kept.value = '';
              }}
            />
          </label>
          <button type="submit">keep it</button>
          <p role="status">{kept.value}</p>
        </form>
      )}
      <div class="hints">
        <ol aria-live="polite">
          {lines.slice(0, shown.value).map((line, at) => (
            <li key={line.does}>
              {line.does} {line.sum && <span class="number">{line.sum}</span>}
              {all && (
                <>
                  {' '}
                  <b>
                    {line.gives.label}: {keyText(line.gives, system)}
                  </b>
                </>
              )}
              {!all && at === lines.length - 1 && ' Now work it out.'}
            </li>
          ))}
        </ol>
        <button
          type="button"
          class="quiet"
          aria-disabled={all}
          onClick={() => {
            if (all) return;
            shown.value++;
            if (shown.value > lines.length) keep('hint', 'the answer', 'All steps were shown.', false);
          }}
        >
          {all
            ? 'that was the answer'
            : shown.value === lines.length
              ? 'hint: the answer'
              : shown.value === 0
                ? 'hint: the first step'
                : 'hint: the next step'}
        </button>
      </div>
    </div>
  );
}
