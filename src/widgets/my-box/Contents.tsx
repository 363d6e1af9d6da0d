/** What goes in the box: the list of things, what they take up together, and how they may lie. */
import { type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import type { Item } from '../../box/core/field.ts';
import { withItems } from '../../box/design/contents.ts';
import { fields } from '../../box/subjects/inputs.ts';
import type { Values } from '../../box/whole/index.ts';
import { useLead } from '../kit/use-lead.ts';
import type { Store } from '../kit/use-store.ts';
import { ItemRow } from './ItemRow.tsx';
import { SizeOfContents } from './SizeOfContents.tsx';
import { WaysToLie } from './WaysToLie.tsx';

/** A thing of the catalog; no height where it depends on the stack. */
export interface CatalogItem {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly height: number | undefined;
  /** How the size is known, with a warning to measure where it varies. */
  readonly known: string;
}

interface Props {
  store: Store;
  /** The box, as far as the drawings follow it. */
  shown: ReadonlySignal<Values>;
  catalog: readonly CatalogItem[];
}

export function Contents({ store, shown, catalog }: Props) {
  const refusal = useId();
  /** Why the thing chosen last was not taken in. */
  const refused = useSignal<string | undefined>(undefined);
  /** What is to be said of the last change of the list, as long as that list stands. */
  const note = useSignal<{ items: readonly Item[]; text: string } | undefined>(undefined);
  const items = useComputed(() => store.values.value.items);

  const list = useRef<HTMLUListElement>(null);
  const adding = useRef<HTMLSelectElement>(null);
  const lead = useLead();
  /** Where the reader goes on when a row or the choice has gone: the row in its place, the last one, or the choice. */
  const leadToRow = (place: number) =>
    lead(() => {
      const rows = list.current?.children ?? [];
      return rows[Math.min(place, rows.length - 1)]?.querySelector('input') ?? adding.current;
    });
  /** A row holds what is half typed in it, so it keeps its key while others are taken out. */
  const keys = useRef<number[]>([]);
  const unused = useRef(0);
  keys.current.length = Math.min(keys.current.length, items.value.length);
  while (keys.current.length < items.value.length) keys.current.push(unused.current++);

  /** Takes a new list; gives the words where it cannot be. */
  const setItems = (changed: readonly Item[]): string | undefined => {
    const result = withItems(store.values.value, changed);
    if ('refused' in result) return result.refused;
    store.set(result.inputs);
    refused.value = undefined;
    note.value = result.note ? { items: changed, text: result.note } : undefined;
    return undefined;
  };
  const remove = (place: number) => {
    refused.value = setItems(items.value.filter((_, index) => index !== place));
    if (refused.value) return;
    keys.current.splice(place, 1);
    leadToRow(place);
  };
  const add = (name: string) => {
    const from = catalog.find((thing) => thing.name === name);
    const size = from ?? { name: 'my own', length: 50, width: 30 };
    refused.value = setItems([
      ...items.value,
      { name: size.name, length: size.length, width: size.width, height: from?.height ?? 10, count: 1 },
    ]);
    // The list is full: the choice is gone.
    if (items.value.length === fields.items.most) leadToRow(fields.items.most);
  };

  return (
    <>
      <ul class="items" ref={list}>
        {items.value.map((item, index) => (
          <ItemRow
            key={keys.current[index]}
            item={item}
            system={store.units.value}
            note={catalog.find((thing) => thing.name === item.name)?.known}
            onChange={(changed) =>
              setItems(items.value.map((old, place) => (place === index ? { ...old, ...changed } : old)))
            }
            onRemove={() => remove(index)}
          />
        ))}
      </ul>
      {items.value.length < fields.items.most && (
        <p class="add-item">
          <label>
            add{' '}
            <select
              ref={adding}
              value=""
              aria-describedby={refused.value && refusal}
              onChange={(event) => {
                if (event.currentTarget.value) add(event.currentTarget.value);
                event.currentTarget.value = '';
              }}
            >
              <option value="">choose a thing</option>
              <option value="my own">my own</option>
              {catalog.map(({ name }) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        </p>
      )}
      {refused.value && (
        <p class="message" id={refusal} role="alert">
          {refused.value}
        </p>
      )}
      <SizeOfContents of={shown} />
      {note.value?.items === items.value && (
        <p class="message" role="status">
          {note.value.text}
        </p>
      )}
      <WaysToLie of={shown} store={store} />
    </>
  );
}
