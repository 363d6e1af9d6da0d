/** One input of the box: a slider and a number field with one value, or a choice. */

import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { type NumberField, printOf, stepOf } from '../../box/core/field.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { type ChoiceName, fields, type NumberName } from '../../box/subjects/inputs.ts';
import { seenBy, shownRulers } from '../../figures/parts/my-ruler.ts';
import { format, type UnitSystem } from '../../units/index.ts';
import { BelowField } from './BelowField.tsx';
import { Slider } from './Slider.tsx';
import { HeardUnit, Unit } from './Unit.tsx';
import type { Store } from './use-store.ts';
import { useTypedNumber } from './use-typed-number.ts';

/** What a control works on. */
type Target = Pick<Store, 'values' | 'units' | 'set'>;

export function Control({ name, store }: { name: NumberName | ChoiceName; store: Target }) {
  const field = fields[name];
  // Its own input only: another slider's movement does not redraw this one.
  const value = useComputed(() => store.values.value[name]);
  const warning = useComputed(() =>
    field.type === 'number' ? warningOf(field, value.value as number, store.values.value) : undefined,
  );
  return field.type === 'number' ? (
    <NumberControl
      field={field}
      value={value.value as number}
      system={store.units.value}
      set={(value) => store.set({ [name]: value })}
      warning={warning.value}
    />
  ) : (
    <ChoiceControl name={name as ChoiceName} chosen={value.value as string} store={store} />
  );
}

/** What is wrong with a number beside another input. */
export function warningOf({ notAbove, notBelow }: NumberField, value: number, box: Box): string | undefined {
  const other = (name: string) => Number(box[name as NumberName]);
  if (notAbove && value > other(notAbove[0])) return notAbove[1];
  return notBelow && value < other(notBelow[0]) ? notBelow[1] : undefined;
}

interface NumberControlProps {
  field: NumberField;
  value: number;
  system: UnitSystem;
  set: (value: number) => void;
  /** What is wrong with this number beside the others. */
  warning?: string | undefined;
}

/** A slider and a number field for one number, of the box or of a figure's own. */
export function NumberControl({ field, value, system, set: change, warning }: NumberControlProps) {
  const id = useId();
  const { kind } = field;
  /** A warning may stand at several fields: the one the reader changed tells it. */
  const used = useSignal(false);
  const set = (to: number) => {
    used.value = true;
    change(to);
    return undefined;
  };
  const number = useTypedNumber({ ...field, value, system, set });
  const step = stepOf(field, shownRulers.value[system]);
  const show = (spoken: boolean) => format(value, kind, { ...seenBy(system, printOf(field)), spoken });
  const message = number.message ? `${number.message} ${show(false)} stays in use.` : warning;
  const help = !number.message && field.help;
  const described = [message && `${id}m`, help && `${id}h`].filter(Boolean).join(' ');
  return (
    <div class="control">
      <label for={id}>
        {field.label}
        <HeardUnit kind={kind} system={system} />
      </label>
      <Slider
        aria-label={`${field.label}, slider`}
        aria-valuetext={show(true)}
        min={Math.ceil(field.low / step - 1e-9)}
        max={Math.floor(field.high / step + 1e-9)}
        value={Math.round(value / step)}
        set={(count) => {
          number.drop();
          set(count * step);
        }}
      />
      <input {...number.input} id={id} aria-describedby={described || undefined} />
      <Unit kind={kind} system={system} />
      <BelowField id={id} message={message} isNew={Boolean(number.message) || used.value} help={help} />
    </div>
  );
}

/** What is drawn later has all its options at once. */
let pageIsAwake = false;

function ChoiceControl({ name, chosen, store }: { name: ChoiceName; chosen: string; store: Target }) {
  const id = useId();
  const field = fields[name];
  /** A page is built with the chosen option alone: without JavaScript nothing can be chosen, and the woods are many. */
  const awake = useSignal(pageIsAwake);
  useEffect(() => {
    pageIsAwake = true;
    awake.value = true;
  }, []);
  return (
    <div class="control" data-input={name}>
      <label for={id}>{field.label}</label>
      <select
        id={id}
        value={chosen}
        onChange={(event) => store.set({ [name]: event.currentTarget.value } as Partial<Box>)}
      >
        {Object.entries(field.options)
          .filter(([value]) => awake.value || value === chosen)
          .map(([value, label]) => (
            <option key={value} value={value} selected={value === chosen}>
              {label}
            </option>
          ))}
      </select>
      {field.help && <p class="help">{field.help}</p>}
      {field.note && <p class="help">{field.note(chosen)}</p>}
    </div>
  );
}
