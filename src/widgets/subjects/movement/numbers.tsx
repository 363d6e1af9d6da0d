/** The numbers of a year one by one: two readings of a hygrometer, or twelve months. */
import { useSignal } from '@preact/signals';
import type { NumberField } from '../../../box/core/field.ts';
import { MONTHS } from '../../../calc/air/year.ts';
import type { Reading } from '../../../calc/air/year-from-readings.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { chooseYear, editMonth, type YearChoice } from '../../../notebook/measure/year.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { NumberControl } from '../../kit/Control.tsx';
import { DayControl } from './DayControl.tsx';
import type { ChosenYear } from './use-year.ts';

/** 0 and 100 may be given: the sorption table then says why it has no figure there. */
const humidity = (label: string): NumberField => ({
  type: 'number',
  label,
  kind: 'percent',
  low: 0,
  high: 100,
  step: 1,
  digits: 0,
});
const temperature: NumberField = {
  type: 'number',
  label: 'temperature',
  kind: 'temperature',
  low: -20,
  high: 45,
  step: 1,
  digits: 0,
};

export function ReadingControl({
  choice,
  index,
  system,
}: {
  choice: YearChoice;
  index: 0 | 1;
  system: UnitSystem;
}) {
  const reading = choice.readings[index];
  const set = (part: Partial<Reading>) => {
    const changed = { ...reading, ...part };
    chooseYear({ readings: index === 0 ? [changed, choice.readings[1]] : [choice.readings[0], changed] });
  };
  return (
    <fieldset>
      <legend>{index === 0 ? 'first reading' : 'second reading'}</legend>
      <DayControl label="on" day={reading.day} set={(day) => set({ day })} />
      <NumberControl
        field={humidity('humidity')}
        value={reading.humidity}
        system={system}
        set={(value) => set({ humidity: value })}
      />
      <NumberControl
        field={temperature}
        value={reading.temperature}
        system={system}
        set={(value) => set({ temperature: value })}
      />
    </fieldset>
  );
}

/** Twelve months to change, and the other half of the globe. */
export function MonthControls({ choice, year, system }: ChosenYear & { system: UnitSystem }) {
  const open = useSignal(false);
  const shown = isRefused(year) ? choice.months : year;
  return (
    <details
      class="more"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>month by month</summary>
      {open.value &&
        MONTHS.map((month, index) => (
          <NumberControl
            key={month}
            field={humidity(`humidity in ${month}`)}
            value={Math.round(shown.humidity[index]!)}
            system={system}
            set={(value) => editMonth(year, index, value)}
          />
        ))}
      <label>
        <input
          type="checkbox"
          checked={choice.south}
          disabled={choice.from === 'months'}
          onChange={(event) => chooseYear({ south: event.currentTarget.checked })}
        />{' '}
        seasons of the southern half of the globe
      </label>
    </details>
  );
}
