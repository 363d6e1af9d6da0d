/**
 * Whether a fold is open. A reader may open it before the page is awake: then it is found open on waking.
 * Spread `fold` onto the `<details>`.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

export function useOpen(initially = false) {
  const open = useSignal(initially);
  const ref = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (ref.current?.open) open.value = true;
  }, []);
  const onToggle = (event: { currentTarget: HTMLDetailsElement }) => {
    open.value = event.currentTarget.open;
  };
  return { open, fold: { ref, onToggle } };
}
