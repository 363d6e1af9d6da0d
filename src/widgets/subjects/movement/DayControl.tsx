/** A day of the year by a slider. */
import { useId } from 'preact/hooks';
import { dateOf } from '../../../calc/air/year.ts';
import { chooseYear, type YearChoice } from '../../../notebook/measure/year.ts';
import { Slider } from '../../kit/Slider.tsx';

/** A slider over the days of the year that says the date. */
export function DayControl({ label, day, set }: { label: string; day: number; set: (day: number) => void }) {
  const id = useId();
  return (
    <div class="control day">
      <label for={id}>
        {label} <strong aria-hidden="true">{dateOf(day)}</strong>
      </label>
      <Slider id={id} min={0} max={364} value={day} aria-valuetext={dateOf(day)} set={set} />
    </div>
  );
}

export const BuildDay = ({ choice }: { choice: YearChoice }) => (
  <DayControl label="built on" day={choice.built} set={(built) => chooseYear({ built })} />
);
