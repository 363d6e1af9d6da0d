/** Leads the focus on when a press draws away what was pressed, so that a reader with a keyboard stays where they are. */
import { useLayoutEffect, useRef } from 'preact/hooks';

/** Tell the returned function, before the change, how to find where to go; the focus goes there after the next drawing. */
export function useLead(): (find: () => HTMLElement | null | undefined) => void {
  const wanted = useRef<() => HTMLElement | null | undefined>();
  useLayoutEffect(() => {
    const find = wanted.current;
    wanted.current = undefined;
    find?.()?.focus();
  });
  return (find) => {
    wanted.current = find;
  };
}
