/** One thing that goes in the box: name, three sizes, how many. A text that cannot be read stays, with its message. */
import { useId, useRef } from 'preact/hooks';
import type { Item } from '../../box/core/field.ts';
import { itemLimits } from '../../notebook/settle.ts';
import { fieldUnit, type Kind, type UnitSystem } from '../../units/index.ts';
import { TextInput } from '../kit/TextInput.tsx';
import { HeardUnit } from '../kit/Unit.tsx';
import { useTypedNumber } from '../kit/use-typed-number.ts';

interface Props {
  item: Item;
  system: UnitSystem;
  /** How the size is known, from the catalog. */
  note: string | undefined;
  /** What of it changes; gives the words where the things then fit in no way. */
  onChange: (changed: Partial<Item>) => string | undefined;
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

type Column = (typeof columns)[number];

interface ColumnProps extends Pick<Props, 'item' | 'system'> {
  column: Column;
  /** Gives the words where the number cannot be taken; `drop` takes its text out of the field. */
  onNumber: (name: Column['name'], value: number, drop: () => void) => string | undefined;
  /** The number that was not taken is no longer wanted. */
  onForget: (name: Column['name']) => void;
}

function ItemNumber({ column, item, system, onNumber, onForget }: ColumnProps) {
  const id = useId();
  const { name, label, kind, limits } = column;
  const { input, message, drop } = useTypedNumber({
    kind,
    low: limits[0],
    high: limits[1],
    value: item[name],
    system,
    set: (value) => onNumber(name, value, drop),
    forget: () => onForget(name),
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
  /** Numbers that can be read but were refused, since the things then fit in no way. */
  const waiting = useRef(new Map<Column['name'], { value: number; drop: () => void }>());
  const onNumber: ColumnProps['onNumber'] = (name, value, drop) => {
    // A thing may come to fit only when all its sizes are typed.
    waiting.current.set(name, { value, drop });
    const all = [...waiting.current];
    const message = onChange(Object.fromEntries(all.map(([of, wanted]) => [of, wanted.value])));
    if (message) return message;
    for (const [, wanted] of all) wanted.drop();
    return undefined;
  };
  return (
    <li class="item">
      <label for={id}>
        thing
        <TextInput id={id} maxLength={60} value={item.name} set={(name) => void onChange({ name })} />
      </label>
      {columns.map((column) => (
        <ItemNumber
          key={column.name}
          column={column}
          item={item}
          system={system}
          onNumber={onNumber}
          onForget={(name) => waiting.current.delete(name)}
        />
      ))}
      <button type="button" class="quiet" onClick={onRemove} aria-label={`take out ${item.name}`}>
        take out
      </button>
      {note && <p class="help">{note}</p>}
    </li>
  );
}
