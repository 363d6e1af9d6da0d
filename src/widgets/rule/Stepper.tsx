/** One input of the box beside the number it gives: less, the number itself, more, in steps of the reader's ruler. */
import { useId } from 'preact/hooks';
import { type NumberField, stepOf } from '../../box/core/field.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import type { UnitSystem } from '../../units/index.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useTypedNumber } from '../kit/use-typed-number.ts';

interface Props {
  field: NumberField;
  value: number;
  system: UnitSystem;
  set: (value: number) => void;
}

/** A number that lies on a step, give or take arithmetic noise, is not stepped to again. */
const noise = 1e-6;

/** The next step above or below a number, within the field's limits. */
function stepped({ low, high }: NumberField, value: number, step: number, way: 1 | -1): number {
  const at = value / step;
  const next = way > 0 ? Math.floor(at + noise) + 1 : Math.ceil(at - noise) - 1;
  return Math.min(high, Math.max(low, next * step));
}

export function Stepper({ field, value, system, set }: Props) {
  const id = useId();
  const { kind, label } = field;
  const number = useTypedNumber({
    ...field,
    value,
    system,
    set: (to) => {
      set(to);
      return undefined;
    },
  });
  const go = (way: 1 | -1) => {
    number.drop();
    set(stepped(field, value, stepOf(field, shownRulers.value[system]), way));
  };
  const arrows = { ArrowUp: 1, ArrowDown: -1 } as Readonly<Record<string, 1 | -1>>;
  return (
    <div class="stepper">
      <label for={id}>
        <span class="heard">{label}, </span>in my box
        <HeardUnit kind={kind} system={system} />
      </label>
      <span class="steps">
        <button type="button" class="quiet" aria-label={`less: ${label}`} onClick={() => go(-1)}>
          −
        </button>
        <input
          {...number.input}
          id={id}
          aria-describedby={number.message ? `${id}m` : undefined}
          onKeyDown={(event) => {
            const way = arrows[event.key];
            if (!way) return number.input.onKeyDown(event);
            event.preventDefault();
            go(way);
          }}
        />
        <Unit kind={kind} system={system} />
        <button type="button" class="quiet" aria-label={`more: ${label}`} onClick={() => go(1)}>
          +
        </button>
      </span>
      {number.message && (
        <p class="message" id={`${id}m`} role="alert">
          {number.message}
        </p>
      )}
    </div>
  );
}
