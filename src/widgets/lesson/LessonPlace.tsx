/**
 * The contents of a lesson as a rule with one division a step: where the reader is, what is done, the way back. On a narrow
 * screen a bar at the foot of the screen, which opens the list upward. It also marks the steps of the page as done, and wakes what stands
 * of the reader's notebook beside them: a script of its own would be one more request.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { finish, loadProgress, progress, reach, reopen, startOver } from '../../notebook/progress.ts';
import { wakeNotebook } from '../beside/at-hand.ts';
import { useHere } from './use-here.ts';

interface Props {
  lesson: string;
  steps: readonly { id: string; short: string }[];
}

/** The step something stands in. */
const stepOf = (target: EventTarget | null) =>
  target instanceof Element ? target.closest<HTMLElement>('.lesson-step')?.dataset.step : undefined;

export default function LessonPlace({ lesson, steps }: Props) {
  const list = useSignal(false);
  const awake = useSignal(false);
  const button = useRef<HTMLButtonElement>(null);
  const here = useHere(steps.map(({ id }) => id));
  const mine = awake.value ? progress.value[lesson] : undefined;
  const stateOf = (id: string) => mine?.steps[id];
  const at = Math.max(
    0,
    steps.findIndex(({ id }) => id === here.value),
  );
  const done = steps.filter(({ id }) => stateOf(id)).length;
  const next = steps[at + 1];
  /** Where the reader was when they came, if that is further on. */
  const cameTo = useSignal<string | undefined>(undefined);

  useEffect(() => {
    loadProgress();
    wakeNotebook();
    awake.value = true;
    const earlier = progress.peek()[lesson]?.at;
    if (earlier && earlier !== steps[0]?.id && !location.hash && scrollY < 200) cameTo.value = earlier;
    const onGuess = (event: Event) => {
      const step = stepOf(event.target);
      if (!step) return;
      const { detail } = event as CustomEvent<'done' | 'skipped' | 'covered'>;
      if (detail === 'covered') reopen(lesson, step);
      else finish(lesson, step, detail);
    };
    const onClick = ({ target }: MouseEvent) => {
      const onwards = target instanceof Element && target.closest('.next-step a');
      const from = stepOf(target);
      if (onwards && from && !progress.peek()[lesson]?.steps[from]) finish(lesson, from, 'done');
    };
    document.addEventListener('guess', onGuess);
    document.addEventListener('click', onClick);
    return () => {
      document.removeEventListener('guess', onGuess);
      document.removeEventListener('click', onClick);
    };
  }, []);
  useEffect(() => {
    if (!awake.value || !here.value) return;
    // Someone who has just come, and was further on, is offered the way there first.
    if (here.value === steps[0]?.id && cameTo.peek()) return;
    cameTo.value = undefined;
    reach(lesson, here.value);
  }, [here.value, awake.value]);

  const close = () => {
    list.value = false;
    button.current?.focus();
  };
  return (
    <nav
      class={`lesson-place ${list.value ? 'open' : ''}`}
      aria-label="In this lesson"
      onKeyDown={({ key }) => {
        if (key === 'Escape' && list.value) close();
      }}
    >
      <h2 class="place-title">In this lesson</h2>
      <ol>
        {steps.map(({ id, short }, i) => {
          const state = stateOf(id);
          return (
            <li key={id} class={state}>
              <a
                href={`#${id}`}
                aria-current={i === at ? 'step' : undefined}
                onClick={() => {
                  list.value = false;
                }}
              >
                {short}
                {state && <span class="heard">, {state}</span>}
              </a>
            </li>
          );
        })}
      </ol>
      <p class="place-done">
        {done} of {steps.length} done
        {done > 0 && (
          <>
            {' '}
            <button
              type="button"
              class="link"
              onClick={() => {
                startOver(lesson);
                location.hash = steps[0]!.id;
              }}
            >
              start over
            </button>
          </>
        )}
      </p>
      {cameTo.value && (
        <p class="place-back">
          <a
            href={`#${cameTo.value}`}
            onClick={() => {
              cameTo.value = undefined;
            }}
          >
            Back to where you were: {steps.find(({ id }) => id === cameTo.value)?.short}
          </a>
        </p>
      )}
      <div class="place-bar">
        <button
          type="button"
          ref={button}
          aria-expanded={list.value}
          onClick={() => {
            list.value = !list.value;
          }}
        >
          <span>
            {at + 1} of {steps.length}
          </span>{' '}
          {steps[at]?.short}
        </button>
        {next && <a href={`#${next.id}`}>Next</a>}
      </div>
    </nav>
  );
}
