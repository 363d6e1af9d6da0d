/** What asks questions again, with its schedule: fetched with the first use. */

import { useSignal } from '@preact/signals';
import { render } from 'preact';
import { answers, loadAnswers } from '../../notebook/recall/answers.ts';
import { today, whenOf } from '../../notebook/recall/day.ts';
import { dueOf, mostAtOnce, pickThree } from '../../notebook/recall/pick.ts';
import { useLead } from '../kit/use-lead.ts';
import { AskInTurn } from './AskInTurn.tsx';
import type { Question } from './words.ts';

const ofIds = (questions: readonly Question[], ids: readonly string[]) =>
  ids.flatMap((id) => questions.find((one) => one.id === id) ?? []);

/** The three before a lesson: due ones, then new ones, from the lessons before it. They stay while the page is open. */
function BeforeLesson({ lesson, questions }: { lesson: string; questions: readonly Question[] }) {
  loadAnswers();
  const lead = useLead();
  const end = questions.findIndex((one) => one.lesson === lesson);
  const earlier = questions.slice(0, Math.max(0, end));
  const found = dueOf(
    earlier.map(({ id }) => id),
    answers.peek(),
    today(),
  );
  const asked = useSignal(ofIds(earlier, pickThree(found)));
  if (asked.value.length > 0) return <AskInTurn questions={asked.value} />;
  return (
    <>
      <p>
        Nothing is due: you were asked all of the earlier lessons.{' '}
        {found.next !== undefined && `The next one comes ${whenOf(found.next, today())}.`}
      </p>
      <p>
        <button
          type="button"
          class="quiet"
          onClick={({ currentTarget }) => {
            const around = currentTarget.closest('details');
            asked.value = earlier.slice(-mostAtOnce);
            lead(() => around?.querySelector('legend'));
          }}
        >
          ask me three anyway
        </button>
      </p>
    </>
  );
}

/** What is due today of all that was asked before, as a number and a button. */
export function DueNow({ questions }: { questions: readonly Question[] }) {
  const asked = useSignal<readonly Question[] | undefined>(undefined);
  const lead = useLead();
  const now = today();
  const { due, next } = dueOf(
    questions.map(({ id }) => id),
    answers.value,
    now,
  );
  if (asked.value) return <AskInTurn questions={asked.value} />;
  if (due.length === 0)
    return (
      <p class="due-says">
        Nothing is due today. {next !== undefined && `The next one comes ${whenOf(next, now)}.`}
      </p>
    );
  return (
    <>
      <p class="due-says">
        {due.length === 1 ? 'One question is' : `${due.length} questions are`} due today.
      </p>
      <p>
        <button
          type="button"
          onClick={({ currentTarget }) => {
            const around = currentTarget.closest('section');
            asked.value = ofIds(questions, due);
            lead(() => around?.querySelector('legend'));
          }}
        >
          answer {due.length === 1 ? 'it' : 'them'}
        </button>
      </p>
    </>
  );
}

/** Puts the questions of a lesson into its fold, in the place of those built into the page. */
export function askBefore(fold: HTMLElement, questions: readonly Question[]): void {
  const room = document.createElement('div');
  fold.append(room);
  render(<BeforeLesson lesson={fold.dataset.lesson!} questions={questions} />, room);
}
