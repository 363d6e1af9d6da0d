/** What goes in, in a line or two; the list to change it is behind a fold. */
import type { ComponentChildren } from 'preact';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import type { Store } from '../kit/use-store.ts';
import { Fold } from './Fold.tsx';

export function ContentsInShort({ store, children }: { store: Store; children: () => ComponentChildren }) {
  const { items, contentsLength, contentsWidth, contentsHeight } = store.values.value;
  return (
    <div class="contents">
      <p>
        {items.length === 0 ? (
          <strong>Nothing goes in yet.</strong>
        ) : (
          items.map(({ name, count, length, width, height }, place) => (
            <span key={place} class="contents-thing">
              <strong>
                {count} × {name}
              </strong>
              , <Sizes of={[length, width, height]} /> each
            </span>
          ))
        )}
        <span>
          together <Sizes of={[contentsLength, contentsWidth, contentsHeight]} />
        </span>
      </p>
      <Fold class="change-contents" summary="change what goes in">
        {children}
      </Fold>
    </div>
  );
}
