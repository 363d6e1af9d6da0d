/** Controls of numbers and choices that belong to one figure and not to the box. */
import type { Signal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { NumberField } from '../../box/core/field.ts';
import type { UnitSystem } from '../../units/index.ts';
import { NumberControl } from '../kit/Control.tsx';

interface OwnNumberProps {
  field: NumberField;
  of: Signal<number>;
  system: UnitSystem;
}

export function OwnNumber({ field, of, system }: OwnNumberProps) {
  return (
    <NumberControl
      field={field}
      value={of.value}
      system={system}
      set={(value) => {
        of.value = value;
      }}
    />
  );
}

interface OwnChoiceProps {
  label: string;
  options: readonly string[];
  /** Index of the option chosen. */
  of: Signal<number>;
}

export function OwnChoice({ label, options, of }: OwnChoiceProps) {
  const id = useId();
  return (
    <div class="control">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={of.value}
        onChange={(event) => {
          of.value = Number(event.currentTarget.value);
        }}
      >
        {options.map((option, index) => (
          <option key={option} value={index} selected={index === of.value}>
            {option}
          </option>
        ))}
      </select>
    </div>
  );
}
