/** The ways in which the contents may lie, best first. */
import { type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import { blockOf, isLaid, waysToLie } from '../../box/design/ways-to-lie.ts';
import type { Values } from '../../box/whole/index.ts';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import { Arrangement } from '../../figures/size/Arrangement.tsx';
import { format } from '../../units/index.ts';
import type { Store } from '../kit/use-store.ts';

/** How many ways are shown before the reader asks for more. */
const few = 4;
/** And after that; the one chosen is always among them. */
const many = 12;

interface Props {
  /** The box, as far as the drawings follow it: to search for ways to lie takes longer than a frame. */
  of: ReadonlySignal<Values>;
  store: Store;
}

export function WaysToLie({ of, store }: Props) {
  const more = useSignal(false);
  const items = useComputed(() => of.value.items);
  const found = useComputed(() => waysToLie(of.value));
  const chosen = useComputed(() => found.value.find((way) => isLaid(of.value, way)));
  /** What a change of the list has laid stands first; what the reader chooses then does not move under their hand. */
  const inOrder = useComputed(() => {
    const ways = found.value;
    const laid = ways.find((way) => isLaid(of.peek(), way));
    return laid ? [laid, ...ways.filter((way) => way !== laid)] : ways;
  });
  const shown = useComputed(() =>
    inOrder.value.filter((way, place) => place < (more.value ? many : few) || way === chosen.value),
  );

  if (found.value.length === 0) return null;
  return (
    <>
      <h3>How they may lie</h3>
      <ul class="ways">
        {shown.value.map((way) => (
          <li
            key={`${way.length},${way.width},${way.height}`}
            class={way === chosen.value ? 'chosen' : undefined}
          >
            <Arrangement found={way} things={items.value} />
            <p>
              <Sizes of={[way.length, way.width, way.height]} between=" by " asTyped />,{' '}
              {format(way.waste * 100, 'percent', { system: 'mm', digits: 0 })} empty.{' '}
              <button
                type="button"
                class="quiet"
                aria-pressed={way === chosen.value}
                onClick={() => store.set(blockOf(way))}
              >
                lay them like this
              </button>
              {way === chosen.value && <strong> Chosen.</strong>}
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
  );
}
