/** One thing that goes in the box: name, three sizes, how many. A text that cannot be read stays, with its message. */
import { useId } from 'preact/hooks';
import type { Item } from '../../box/box.ts';
import { itemLimits } from '../../notebook/settle.ts';
import { fieldUnit, type Kind, type UnitSystem } from '../../units/index.ts';
import { TextInput } from '../TextInput.tsx';
import { HeardUnit } from '../Unit.tsx';
import { useTypedNumber } from '../use-typed-number.ts';

interface Props {
  item: Item;
  system: UnitSystem;
  /** How the size is known, from the catalog. */
  note: string | undefined;
  /** What of it changes. */
  onChange: (changed: Partial<Item>) => void;
  onRemove: () => void;
}

const { size, count } = itemLimits;
const columns = [
  { name: 'length', label: 'length', kind: 'length', limits: size },
  { name: 'width', label: 'width', kind: 'length', limits: size },
  { name: 'height', label: 'height', kind: 'length', limits: size },
  { name: 'count', label: 'how many', kind: 'count', limits: count },
] as const satisfies readonly {
  name: keyof Item;
  label: string;
  kind: Kind;
  limits: readonly [number, number];
}[];

interface ColumnProps extends Pick<Props, 'item' | 'system' | 'onChange'> {
  column: (typeof columns)[number];
}

function ItemNumber({ column, item, system, onChange }: ColumnProps) {
  const id = useId();
  const { name, label, kind, limits } = column;
  const { input, message } = useTypedNumber({
    kind,
    low: limits[0],
    high: limits[1],
    value: item[name],
    system,
    set: (value) => onChange({ [name]: value }),
  });
  return (
    <>
      <label>
        {label} <span aria-hidden="true">{fieldUnit(kind, system)}</span>
        <HeardUnit kind={kind} system={system} />
        <input {...input} aria-describedby={message && id} />
      </label>
      {message && (
        <p class="message" id={id} role="alert">
          {label}: {message}
        </p>
      )}
    </>
  );
}

export function ItemRow({ item, system, note, onChange, onRemove }: Props) {
  const id = useId();
  return (
    <li class="item">
      <label for={id}>
        thing
        <TextInput id={id} maxLength={60} value={item.name} set={(name) => onChange({ name })} />
      </label>
      {columns.map((column) => (
        <ItemNumber key={column.name} column={column} item={item} system={system} onChange={onChange} />
      ))}
      <button type="button" class="quiet" onClick={onRemove} aria-label={`take out ${item.name}`}>
        take out
      </button>
      {note && <p class="help">{note}</p>}
    </li>
  );
}
