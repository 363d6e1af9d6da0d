/**
 * A worked example that fades from its last line backwards, each time with new numbers. Beside every step stands the
 * question which rule it is.
 */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Exercise, Line, Task } from '../../exercises/core/exercise.ts';
import { isMissing, rulesToPick, stagesOf } from '../../exercises/core/fade.ts';
import { type Principle, principleRule, principleText } from '../../exercises/core/principles.ts';
import { exampleTask, firstStepTo } from '../../exercises/core/task.ts';
import { keyText } from '../../exercises/core/written.ts';
import type { UnitSystem } from '../../units/index.ts';
import { href } from '../kit/href.ts';
import { AskedField } from './AskedField.tsx';
import { type GivenFigure, GivenNumbers } from './GivenNumbers.tsx';

const words = ['', 'one', 'two', 'three', 'four', 'five'];

/** What the learner is left to do at a stage. */
const stageName = (missing: number, of: number): string =>
  missing === 0
    ? 'every line is written'
    : missing === of
      ? 'every line is yours'
      : missing === 1
        ? 'the last line is yours'
        : `the last ${words[missing]} lines are yours`;

function RulePick({ task, line }: { task: Task; line: Line }) {
  const id = useId();
  const picked = useSignal('');
  const right = picked.value === line.principle;
  return (
    <div class="rule-pick only-awake">
      <label for={id}>Which rule is this step?</label>
      <select
        id={id}
        value={picked.value}
        onChange={(event) => {
          picked.value = event.currentTarget.value;
        }}
      >
        <option value="">choose</option>
        {rulesToPick(task, line).map((principle: Principle) => (
          <option key={principle} value={principle}>
            {principleText(principle)}
          </option>
        ))}
      </select>
      <p role="status" class={right ? 'right' : 'slip'}>
        {picked.value !== '' && !right && 'Not this one. Look at what the step does with the numbers.'}
        {right && (
          <>
            Yes: <a href={href(`rules/${principleRule(line.principle)}/`)}>its reason</a>.
          </>
        )}
      </p>
    </div>
  );
}

interface Props {
  exercise: Exercise;
  system: UnitSystem;
  figure?: GivenFigure | undefined;
}

export function Worked({ exercise, system, figure }: Props) {
  const missing = useSignal(0);
  const task = exampleTask(exercise, missing.value, system);
  const { lines } = task;
  const last = stagesOf(task) - 1;
  return (
    <div class={`worked ${system}`}>
      <p class="kicker asleep">In {system === 'mm' ? 'millimeters' : 'inches'}</p>
      <p class="stage-name" role="status">
        {missing.value === 0 ? 'Other numbers than yours' : 'New numbers'}:{' '}
        {stageName(missing.value, lines.length)}.
      </p>
      <GivenNumbers task={task} figure={figure} />
      <ol class="worked-lines" key={missing.value}>
        {lines.map((line, at) => (
          <li key={`${line.does}${line.gives.label}`}>
            {isMissing(task, at, missing.value) ? (
              <AskedField asked={line.gives} system={system} begin={firstStepTo(task, at)} />
            ) : (
              <>
                <p>{line.does}</p>
                <p class="sum">
                  {line.sum && <span class="number">{line.sum} = </span>}
                  <b>{keyText(line.gives, system)}</b> <span class="what">{line.gives.label}</span>
                </p>
              </>
            )}
            <RulePick task={task} line={line} />
          </li>
        ))}
      </ol>
      <p class="fade only-awake">
        <button
          type="button"
          class="quiet"
          aria-disabled={missing.value === last}
          onClick={() => {
            if (missing.value < last) missing.value++;
          }}
        >
          fade one more line
        </button>{' '}
        <button
          type="button"
          class="quiet"
          aria-disabled={missing.value === 0}
          onClick={() => {
            if (missing.value > 0) missing.value--;
          }}
        >
          write one more line
        </button>
      </p>
    </div>
  );
}
