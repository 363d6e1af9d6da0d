/** The input of the box that a rule judges, beside its number: less, the number itself, more, in steps of the reader's ruler. */
import { useId } from 'preact/hooks';
import { type NumberField, nextStep, stepOf } from '../../box/core/field.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Stepper } from '../kit/Stepper.tsx';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useTypedNumber } from '../kit/use-typed-number.ts';

interface Props {
  field: NumberField;
  value: number;
  system: UnitSystem;
  set: (value: number) => void;
}

const arrows: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowDown: -1 };

export function OwnNumber({ field, value, system, set }: Props) {
  const id = useId();
  const { kind, label, low, high } = field;
  const number = useTypedNumber({
    ...field,
    value,
    system,
    set: (to) => {
      set(to);
      return undefined;
    },
  });
  const go = (by: 1 | -1) => {
    const step = stepOf(field, shownRulers.value[system]);
    number.drop();
    set(Math.min(high, Math.max(low, nextStep(value / step, by) * step)));
  };
  return (
    <div class="own-number">
      <label for={id}>
        <span class="heard">{label}, </span>in my box
        <HeardUnit kind={kind} system={system} />
      </label>
      <Stepper label={label} onStep={go}>
        <input
          {...number.input}
          id={id}
          aria-describedby={number.message ? `${id}m` : undefined}
          onKeyDown={(event) => {
            const by = arrows[event.key];
            if (!by) return number.input.onKeyDown(event);
            event.preventDefault();
            go(by);
          }}
        />
        <Unit kind={kind} system={system} />
      </Stepper>
      {number.message && (
        <p class="message" id={`${id}m`} role="alert">
          {number.message}
        </p>
      )}
    </div>
  );
}
