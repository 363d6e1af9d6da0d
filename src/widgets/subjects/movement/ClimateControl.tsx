/** Which year of air: a kind of climate, the reader's own months, two readings, or the air of the box. */
import { useId } from 'preact/hooks';
import { chooseYear, kindsOfClimate, type YearChoice } from '../../../notebook/measure/year.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { ReadingControl } from './numbers.tsx';

/** Where the year comes from, and what its numbers are worth. */
export function ClimateControl({ choice, system }: { choice: YearChoice; system: UnitSystem }) {
  const id = useId();
  const climate = kindsOfClimate.find((each) => each.id === choice.from);
  const worth = climate
    ? climate.agreesWith
      ? `Months invented to agree with: ${climate.agreesWith}`
      : 'Invented months.'
    : choice.from === 'box'
      ? 'A plain wave between the driest and the dampest air given for your box.'
      : choice.from === 'readings'
        ? `A plain wave through two readings of your hygrometer, dampest at the end of ${choice.south ? 'January' : 'July'}.`
        : 'Your own months; change them below.';
  const option = (value: string, words: string) => (
    <option key={value} value={value} selected={value === choice.from}>
      {words}
    </option>
  );
  return (
    <>
      <div class="control">
        <label for={id}>a year of indoor air</label>
        <select
          id={id}
          value={choice.from}
          onChange={(event) => chooseYear({ from: event.currentTarget.value })}
        >
          {kindsOfClimate.map((each) => option(each.id, each.name))}
          {option('box', 'The air of my box, as a wave')}
          {option('readings', 'Two readings of my hygrometer')}
          {option('months', 'My own twelve months')}
        </select>
        <p class="help">{worth}</p>
      </div>
      {choice.from === 'readings' &&
        ([0, 1] as const).map((index) => (
          <ReadingControl key={index} choice={choice} index={index} system={system} />
        ))}
    </>
  );
}
