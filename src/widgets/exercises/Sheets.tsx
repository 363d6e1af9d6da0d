/**
 * Sheets for a class: what the teacher chooses, and then the sheets and keys as pages to print. All exercises with their
 * calculation, and what lays out the pages, are fetched when the first sheets are made. Nothing is sent.
 */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { keepSheets, mostLearners } from '../../notebook/learning/sheets.ts';
import { href } from '../kit/href.ts';
import { TextInput } from '../kit/TextInput.tsx';
import { ChooseExercises, OneOf } from './sheets/Choices.tsx';
import { checked } from './sheets/form.ts';
import { type Offered, useChoices } from './sheets/use-choices.ts';

type Maker = typeof import('./sheets/sheets.ts');
type Shown = {
  readonly Printed: Maker['Printed'];
  readonly saveKeys: Maker['saveKeys'];
  readonly made: Awaited<ReturnType<Maker['makeSheets']>>;
  readonly from: number;
};

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

export default function Sheets({ exercises, blocks }: Offered) {
  const id = useId();
  const message = useSignal('');
  const shown = useSignal<Shown | undefined>(undefined);
  const pages = useSignal(0);
  /** Sheets that are other than the choices above them would be printed by mistake. */
  const clear = () => {
    shown.value = undefined;
    pages.value = 0;
    message.value = '';
  };
  const { now, learners, type, change } = useChoices({ exercises, blocks }, clear);

  const make = async (event: Event) => {
    event.preventDefault();
    const from = performance.now();
    const field = (name: string) =>
      (event.currentTarget as HTMLFormElement).querySelector<HTMLInputElement>(`[name=${name}]`)!.value;
    // What stands in the fields counts, also what was typed last and not left.
    const choices = checked({ ...now, className: field('class') }, field('learners'));
    clear();
    if ('missing' in choices) {
      message.value = choices.missing;
      return;
    }
    message.value = 'Making the sheets …';
    keepSheets(choices);
    try {
      const { makeSheets, Printed, saveKeys } = await import('./sheets/sheets.ts');
      const address = location.origin + href('exercises/');
      shown.value = { Printed, saveKeys, made: await makeSheets(choices, address), from };
    } catch {
      message.value =
        'A part of this page could not be fetched, so there are no sheets yet. Your choices stay here: try again once there is a network.';
    }
  };
  const done = (count: number) => {
    const { made, from } = shown.value!;
    const seconds = ((performance.now() - from) / 1000).toFixed(1);
    pages.value = count;
    message.value = `${counted(made.choices.learners, 'learner')}, ${counted(count, 'page')}, made on this device in ${seconds} s. Nothing was sent.`;
  };
  const result = shown.value;
  return (
    <div class="sheets">
      <form class="sheet-form only-awake" onSubmit={make}>
        <p>
          <label for={`${id}c`}>class</label>
          <TextInput
            id={`${id}c`}
            name="class"
            autocomplete="off"
            maxLength={60}
            value={now.className}
            set={(className) => change({ className })}
          />
        </p>
        <p>
          <label for={`${id}n`}>learners, 1 to {mostLearners}</label>
          <TextInput
            id={`${id}n`}
            name="learners"
            inputMode="numeric"
            autocomplete="off"
            maxLength={2}
            value={learners}
            set={type}
          />
        </p>
        <OneOf
          legend="ruler"
          options={[
            ['mm', 'millimeters'],
            ['inch', 'inches'],
          ]}
          value={now.system}
          set={(system) => change({ system })}
        />
        <OneOf
          legend="paper"
          options={[
            ['A4', 'A4'],
            ['Letter', 'Letter'],
          ]}
          value={now.paper}
          set={(paper) => change({ paper })}
        />
        <OneOf
          legend="make"
          options={[
            ['both', 'sheets and keys'],
            ['sheets', 'sheets'],
            ['keys', 'keys'],
          ]}
          value={now.print}
          set={(print) => change({ print })}
        />
        <ChooseExercises
          exercises={exercises}
          blocks={blocks}
          chosen={now.exercises}
          set={(chosen) => change({ exercises: chosen })}
        />
        <p class="sheet-buttons">
          <button type="submit">make the sheets</button>
          {result && pages.value > 0 && (
            <>
              <button type="button" onClick={() => print()}>
                print
              </button>
              <button type="button" class="quiet" onClick={() => result.saveKeys(result.made)}>
                keys as CSV
              </button>
            </>
          )}
        </p>
        <p class="sheet-said" role="status">
          {message.value}
        </p>
      </form>
      {result && <result.Printed key={result.from} made={result.made} done={done} />}
    </div>
  );
}
