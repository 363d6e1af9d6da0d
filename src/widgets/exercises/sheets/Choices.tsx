/** What a teacher chooses for the sheets: one group of radio buttons, and the exercises, by block or one by one. */
import { useId } from 'preact/hooks';
import { blockOf, type Listed, type ListedBlock } from './form.ts';

interface OneOfProps<T extends string> {
  legend: string;
  options: readonly (readonly [value: T, label: string])[];
  value: T;
  set: (value: T) => void;
}

export function OneOf<T extends string>({ legend, options, value, set }: OneOfProps<T>) {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      {options.map(([option, label]) => (
        <label key={option}>
          <input type="radio" name={name} checked={value === option} onChange={() => set(option)} /> {label}
        </label>
      ))}
    </fieldset>
  );
}

interface Props {
  exercises: readonly Listed[];
  blocks: readonly ListedBlock[];
  chosen: readonly string[];
  set: (chosen: readonly string[]) => void;
}

export function ChooseExercises({ exercises, blocks, chosen, set }: Props) {
  const id = useId();
  const all = exercises.map((one) => one.id);
  const everything = chosen.length === all.length;
  return (
    <fieldset class="sheet-exercises">
      <legend>exercises</legend>
      <p>
        <label for={id}>those of a block</label>
        <select
          id={id}
          value={everything ? 'all' : blockOf(blocks, chosen)}
          onChange={({ currentTarget: { value } }) => {
            if (value === 'all') set(all);
            else set(blocks.find((block) => block.id === value)?.exercises ?? []);
          }}
        >
          <option value="">as marked below</option>
          <option value="all">all {all.length}</option>
          {blocks.map((block) => (
            <option key={block.id} value={block.id}>
              {block.title}
            </option>
          ))}
        </select>
      </p>
      <div class="sheet-ticks">
        {exercises.map((one) => (
          <label key={one.id}>
            <input
              type="checkbox"
              checked={chosen.includes(one.id)}
              onChange={({ currentTarget }) =>
                set(all.filter((each) => (each === one.id ? currentTarget.checked : chosen.includes(each))))
              }
            />{' '}
            {one.title}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
