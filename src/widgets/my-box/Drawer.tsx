/** What the top's buttons open: a new box, the kept ones, ways to share this one. */
import type { Signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { isExample } from '../../box/subjects/example.ts';
import { type Box, inputsOf } from '../../box/subjects/inputs.ts';
import { change } from '../../notebook/current.ts';
import { setAside } from '../../notebook/designs.ts';
import type { Store } from '../kit/use-store.ts';
import type { CatalogItem } from './Contents.tsx';
import { Late } from './Late.tsx';
import type { Drawer as Name } from './Top.tsx';

interface Props {
  id: string;
  open: Signal<Name | undefined>;
  store: Store;
  catalog: readonly CatalogItem[];
  onName: () => void;
  onCompare: (box: Box) => void;
}

export function Drawer({ id, open, store, catalog, onName, onCompare }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  /** What was pressed to open it: closing leads back there. */
  const opener = useRef<Element | null>(null);
  const which = open.value;
  const close = () => {
    open.value = undefined;
    if (opener.current instanceof HTMLElement) opener.current.focus();
  };
  useLayoutEffect(() => {
    if (!which) return;
    opener.current = document.activeElement;
    heading.current?.focus();
  }, [which]);
  return (
    <div id={id}>
      {which && (
        <section class="drawer designs" aria-label={which}>
          <h2 tabIndex={-1} ref={heading}>
            {which}
          </h2>
          {which === 'new box' && (
            <Late>
              {({ NewBox }) => (
                <NewBox
                  store={store}
                  catalog={catalog}
                  onDone={(box) => {
                    // What was on the bench stays among my boxes; the example is always there.
                    if (!isExample(store.values.peek())) setAside(inputsOf(store.values.peek()));
                    change(box);
                    close();
                  }}
                />
              )}
            </Late>
          )}
          {which === 'my boxes' && (
            <Late>{({ MyBoxes }) => <MyBoxes onName={onName} onCompare={onCompare} />}</Late>
          )}
          {which === 'share' && <Late>{({ Share }) => <Share />}</Late>}
          <p>
            <button type="button" class="quiet" onClick={close}>
              close
            </button>
          </p>
        </section>
      )}
    </div>
  );
}
