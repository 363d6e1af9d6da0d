/** One input of the box: a slider and a number field with one value, or a choice. */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { Box } from '../box/box.ts';
import { type ChoiceName, fields, type NumberField, type NumberName, stepOf } from '../box/fields.ts';
import type { Store } from '../notebook/use-store.ts';
import { fieldUnit, format, toField, type UnitSystem } from '../units/index.ts';
import { readNumber } from './read-number.ts';

export function Control({ name, store }: { name: NumberName | ChoiceName; store: Store }) {
  const field = fields[name];
  // Its own input only: another slider's movement does not redraw this one.
  const value = useComputed(() => store.values.value[name]);
  return field.type === 'number' ? (
    <NumberControl
      field={field}
      value={value.value as number}
      system={store.units.value}
      set={(value) => store.set({ [name]: value })}
    />
  ) : (
    <ChoiceControl name={name as ChoiceName} chosen={value.value as string} store={store} />
  );
}

interface NumberControlProps {
  field: NumberField;
  value: number;
  system: UnitSystem;
  set: (value: number) => void;
}

/** A slider and a number field for one number, of the box or of a figure's own. */
export function NumberControl({ field, value, system, set: change }: NumberControlProps) {
  const id = useId();
  /** Text that could not be used: it stays in the field with a message; the last good value stays in force. */
  const refused = useSignal<{ text: string; message: string } | undefined>(undefined);
  /** What is being typed: while it is, nothing that moves elsewhere may write over it. */
  const typed = useSignal<string | undefined>(undefined);
  const step = stepOf(field, system);
  const show = (number: number, spoken = false) =>
    format(number, field.kind, { system, digits: field.digits, denominator: field.denominator, spoken });
  const set = (number: number) => {
    refused.value = undefined;
    change(number);
  };
  const read = async (text: string) => {
    const parsed = await readNumber(text, field.kind, system);
    if (typed.value === text) typed.value = undefined;
    if (!parsed.ok) refused.value = { text, message: parsed.message };
    else if (parsed.value < field.low || parsed.value > field.high)
      refused.value = { text, message: `Write a value from ${show(field.low)} to ${show(field.high)}.` };
    else set(parsed.value);
  };
  return (
    <div class="control">
      <label for={id}>{field.label}</label>
      <input
        type="range"
        aria-label={`${field.label}, slider`}
        aria-valuetext={show(value, true)}
        min={Math.ceil(field.low / step - 1e-9)}
        max={Math.floor(field.high / step + 1e-9)}
        step={1}
        value={Math.round(value / step)}
        onInput={(event) => set(Number(event.currentTarget.value) * step)}
      />
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={typed.value ?? refused.value?.text ?? toField(value, field.kind, system)}
        aria-invalid={refused.value ? 'true' : undefined}
        aria-describedby={refused.value ? `${id}m` : field.help ? `${id}h` : undefined}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
        }}
        onChange={(event) => void read(event.currentTarget.value)}
        onBlur={() => {
          // Typed and taken back: the browser tells of no change.
          if (typed.value === toField(value, field.kind, system)) typed.value = undefined;
        }}
        onKeyDown={(event) => {
          // The browser tells of no change, but what could not be fetched before may be there now.
          if (event.key === 'Enter' && event.currentTarget.value === refused.value?.text)
            void read(refused.value.text);
          if (event.key !== 'Escape') return;
          typed.value = undefined;
          refused.value = undefined;
        }}
      />
      <span class="unit">{fieldUnit(field.kind, system)}</span>
      {refused.value ? (
        <p class="message" id={`${id}m`} role="alert">
          {refused.value.message} {show(value)} stays in use.
        </p>
      ) : (
        field.help && (
          <p class="help" id={`${id}h`}>
            {field.help}
          </p>
        )
      )}
    </div>
  );
}

function ChoiceControl({ name, chosen, store }: { name: ChoiceName; chosen: string; store: Store }) {
  const id = useId();
  const field = fields[name];
  /** A page is built with the chosen option alone: without JavaScript nothing can be chosen, and the woods are many. */
  const awake = useSignal(false);
  useEffect(() => {
    awake.value = true;
  }, []);
  return (
    <div class="control">
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
