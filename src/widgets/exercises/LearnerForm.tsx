/** Whose numbers: the name of the class, the learner's number in it, and the units. The address then says the same. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import {
  highestNumber,
  learnerInLink,
  learnerOf,
  linkOf,
  unitsInLink,
} from '../../exercises/core/learner.ts';
import { chooseMember, loadExercises, type Member, member } from '../../notebook/learning/exercises.ts';
import { chooseRuler, units } from '../../notebook/units.ts';
import { type UnitSystem, usualRuler } from '../../units/index.ts';
import { TextInput } from '../kit/TextInput.tsx';

/** Another ruler only where the units change: a reader may have chosen a finer one. */
const choose = (system: UnitSystem) => {
  if (units.value !== system) chooseRuler(usualRuler[system]);
};

/** The address says whose numbers are shown, and in which units, so it can be sent or printed. */
const say = (learner: Member) => history.replaceState(history.state, '', linkOf(learner, units.value));

/** Whether the page is awake, and then the learner: a page is built for nobody. */
export function useMember(): { live: boolean; learner: Member | undefined } {
  const live = useSignal(false);
  useEffect(() => {
    loadExercises(learnerInLink(location.search));
    const asked = unitsInLink(location.search);
    if (asked) choose(asked);
    live.value = true;
  }, []);
  return { live: live.value, learner: live.value ? member.value : undefined };
}

const systems: readonly (readonly [UnitSystem, string])[] = [
  ['mm', 'millimeters'],
  ['inch', 'inches'],
];

export function LearnerForm() {
  const id = useId();
  const { live, learner: known } = useMember();
  const className = useSignal<string | undefined>(undefined);
  const number = useSignal<string | undefined>(undefined);
  const message = useSignal('');
  const name = className.value ?? known?.className ?? '';
  const place = number.value ?? (known ? String(known.number) : '');
  const show = (event: Event) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    // What stands in the fields counts, also what was typed last and not left.
    const learner = learnerOf(
      form.querySelector<HTMLInputElement>('[name=class]')!.value,
      form.querySelector<HTMLInputElement>('[name=n]')!.value,
    );
    message.value = learner
      ? `These are the numbers of class ${learner.className}, number ${learner.number}.`
      : `Write the name of your class, and your number in it: a whole number from 1 to ${highestNumber}.`;
    if (!learner) return;
    chooseMember(learner);
    say(learner);
  };
  return (
    <form class="learner only-awake" onSubmit={show}>
      <p>
        <label for={`${id}c`}>class</label>
        <TextInput
          id={`${id}c`}
          name="class"
          autocomplete="off"
          maxLength={60}
          value={name}
          set={(text) => {
            className.value = text;
          }}
        />
      </p>
      <p>
        <label for={`${id}n`}>my number</label>
        <TextInput
          id={`${id}n`}
          name="n"
          inputMode="numeric"
          autocomplete="off"
          maxLength={3}
          value={place}
          set={(text) => {
            number.value = text;
          }}
        />
      </p>
      <fieldset>
        <legend>units</legend>
        {systems.map(([system, label]) => (
          <label key={system}>
            <input
              type="radio"
              name={`${id}u`}
              checked={live && units.value === system}
              onChange={() => {
                choose(system);
                if (known) say(known);
              }}
            />{' '}
            {label}
          </label>
        ))}
      </fieldset>
      <button type="submit">my numbers</button>
      <p class="whose" role="status">
        {message.value}
      </p>
    </form>
  );
}
