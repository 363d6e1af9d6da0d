/** What goes in the box: the list of things, and the ways they may lie, best first. */
import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Item } from '../../box/box.ts';
import { fields } from '../../box/fields.ts';
import { arrangements, type Arrangement as Found } from '../../calc/packing.ts';
import { Arrangement } from '../../figures/Arrangement.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Store } from '../../notebook/use-store.ts';
import { format } from '../../units/index.ts';
import { useLead } from '../use-lead.ts';
import { ItemRow } from './ItemRow.tsx';

/** A thing of the catalog; no height where it depends on the stack. */
export interface CatalogItem {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly height: number | undefined;
  /** How the size is known, with a warning to measure where it varies. */
  readonly known: string;
}

/** How many ways are shown before the reader asks for more. */
const few = 4;

export function Contents({ store, catalog }: { store: Store; catalog: readonly CatalogItem[] }) {
  const more = useSignal(false);
  const items = useComputed(() => store.values.value.items);
  /** As text, so that the search runs again only when it changes. With a given size the contents must fit into it; otherwise the box is built around them. */
  const limits = useComputed(() => {
    const { sizeFrom, insideLength, insideWidth, insideHeight, clearance, headroom } = store.values.value;
    return sizeFrom === 'contents'
      ? ''
      : [insideLength - 2 * clearance, insideWidth - 2 * clearance, insideHeight - headroom].join();
  });
  const found = useComputed(() => {
    const [length = 0, width = 0, height = 0] = limits.value.split(',').map(Number);
    return arrangements(items.value, { ratio: 1.5, ...(limits.value && { most: [length, width, height] }) });
  });
  const chosen = useComputed(() => {
    const { contentsLength, contentsWidth, contentsHeight } = store.values.value;
    return [contentsLength, contentsWidth, contentsHeight].join();
  });
  const [contentsLength = 0, contentsWidth = 0, contentsHeight = 0] = chosen.value.split(',').map(Number);
  const isChosen = ({ length, width, height }: Found) =>
    Math.abs(length - contentsLength) + Math.abs(width - contentsWidth) + Math.abs(height - contentsHeight) <
    0.01;

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

  const remove = (place: number) => {
    keys.current.splice(place, 1);
    leadToRow(place);
    setItems(items.value.filter((_, index) => index !== place));
  };
  const setItems = (changed: readonly Item[]) => store.set({ items: changed });
  const choose = ({ length, width, height }: Found) =>
    store.set({ contentsLength: length, contentsWidth: width, contentsHeight: height });
  const add = (name: string) => {
    const from = catalog.find((thing) => thing.name === name);
    const size = from ?? { name: 'my own', length: 50, width: 30 };
    if (items.value.length + 1 === fields.items.most) leadToRow(fields.items.most);
    setItems([
      ...items.value,
      { name: size.name, length: size.length, width: size.width, height: from?.height ?? 10, count: 1 },
    ]);
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
      {found.value.length === 0 ? (
        <p class="message" role="status">
          {items.value.length === 0
            ? 'Nothing goes in yet: the size below stays as you set it.'
            : 'These things fit into the given inside in no arrangement. Make the inside larger, take something out, or let the size come from the contents.'}
        </p>
      ) : (
        <>
          <h3>How they may lie</h3>
          <ul class="ways">
            {found.value.slice(0, more.value ? undefined : few).map((way) => (
              <li
                key={`${way.length},${way.width},${way.height}`}
                class={isChosen(way) ? 'chosen' : undefined}
              >
                <Arrangement found={way} things={items.value} />
                <p>
                  <Quantity value={way.length} kind="length" /> by{' '}
                  <Quantity value={way.width} kind="length" /> by{' '}
                  <Quantity value={way.height} kind="length" />,{' '}
                  {format(way.waste * 100, 'percent', { system: 'mm', digits: 0 })} empty.{' '}
                  <button
                    type="button"
                    class="quiet"
                    aria-pressed={isChosen(way)}
                    onClick={() => choose(way)}
                  >
                    lay them like this
                  </button>
                  {isChosen(way) && <strong> Chosen.</strong>}
                </p>
              </li>
            ))}
          </ul>
          {found.value.length > few && (
            <button
              type="button"
              class="quiet"
              onClick={() => {
                more.value = !more.value;
              }}
            >
              {more.value ? 'fewer ways' : 'more ways'}
            </button>
          )}
        </>
      )}
    </>
  );
}
