/** One thing that goes in the box: name, three sizes, how many. A text that cannot be read stays, with its message. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Item } from '../../box/box.ts';
import { itemLimits } from '../../notebook/settle.ts';
import { fieldUnit, format, type Kind, toField, type UnitSystem } from '../../units/index.ts';
import { readNumber } from '../read-number.ts';

interface Props {
  item: Item;
  system: UnitSystem;
  /** How the size is known, from the catalog. */
  note: string | undefined;
  /** What of it changes; gives the words where it cannot be. */
  onChange: (changed: Partial<Item>) => string | undefined;
  onRemove: () => void;
}

const { size, count } = itemLimits;
const columns = [
  ['length', 'length', 'length', size],
  ['width', 'width', 'length', size],
  ['height', 'height', 'length', size],
  ['count', 'how many', 'count', count],
] as const satisfies readonly (readonly [keyof Item, string, Kind, readonly [number, number]])[];

export function ItemRow({ item, system, note, onChange, onRemove }: Props) {
  const id = useId();
  /** The texts that stay as typed, the last one last; `wanted` where the number can be read but the things do not fit. */
  const refused = useSignal<readonly { column: string; text: string; message: string; wanted?: number }[]>(
    [],
  );
  /** What is being typed, which nothing may write over. */
  const typed = useSignal<{ column: string; text: string } | undefined>(undefined);
  const read = async (column: (typeof columns)[number], text: string) => {
    const [name, label, kind, [least, most]] = column;
    const parsed = await readNumber(text, kind, system);
    if (typed.value?.column === name && typed.value.text === text) typed.value = undefined;
    const others = refused.value.filter((other) => other.column !== name);
    const refuse = (message: string, wanted?: number) => {
      refused.value = [...others, { column: name, text, message, ...(wanted !== undefined && { wanted }) }];
    };
    if (!parsed.ok) return refuse(parsed.message);
    if (parsed.value < least || parsed.value > most)
      return refuse(
        `The ${label} must lie between ${format(least, kind, { system })} and ${format(most, kind, { system })}.`,
      );
    // A thing may come to fit only when all its sizes are typed.
    const waiting = others.filter(({ wanted }) => wanted !== undefined);
    const message = onChange({
      ...Object.fromEntries(waiting.map(({ column: other, wanted }) => [other, wanted])),
      [name]: parsed.value,
    });
    if (message) refuse(message, parsed.value);
    else refused.value = others.filter((other) => !waiting.includes(other));
  };
  return (
    <li class="item">
      <label>
        thing
        <input
          type="text"
          maxLength={60}
          value={item.name}
          onChange={(event) => onChange({ name: event.currentTarget.value })}
        />
      </label>
      {columns.map((column) => {
        const [name, label, kind] = column;
        const draft = typed.value?.column === name ? typed.value.text : undefined;
        const bad = refused.value.find((one) => one.column === name);
        return (
          <label key={name}>
            {label} {fieldUnit(kind, system)}
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              value={draft ?? bad?.text ?? toField(item[name], kind, system)}
              onInput={(event) => {
                typed.value = { column: name, text: event.currentTarget.value };
              }}
              onBlur={() => {
                if (draft === toField(item[name], kind, system)) typed.value = undefined;
              }}
              aria-invalid={bad ? 'true' : undefined}
              aria-describedby={bad ? `${id}m` : undefined}
              onChange={(event) => void read(column, event.currentTarget.value)}
            />
          </label>
        );
      })}
      <button type="button" class="quiet" onClick={onRemove} aria-label={`take out ${item.name}`}>
        take out
      </button>
      {refused.value.length > 0 ? (
        <p class="message" id={`${id}m`} role="alert">
          {refused.value.at(-1)!.message}
        </p>
      ) : (
        note && <p class="help">{note}</p>
      )}
    </li>
  );
}
