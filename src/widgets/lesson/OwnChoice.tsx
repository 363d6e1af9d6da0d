/** A choice that belongs to one figure and not to the box. */
import { useId } from 'preact/hooks';
import type { ChoiceField } from '../../box/core/field.ts';

interface OwnChoiceProps {
  field: ChoiceField;
  value: string;
  set: (value: string) => void;
}

export function OwnChoice({ field, value, set }: OwnChoiceProps) {
  const id = useId();
  return (
    <div class="control">
      <label for={id}>{field.label}</label>
      <select id={id} value={value} onChange={(event) => set(event.currentTarget.value)}>
        {Object.entries(field.options).map(([option, label]) => (
          <option key={option} value={option} selected={option === value}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
}
