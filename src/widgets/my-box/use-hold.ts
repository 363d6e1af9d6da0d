/** Keeps what the reader touches where it is on the screen while something comes or goes above it. */
import { useRef } from 'preact/hooks';

interface Hold {
  /** For the part of the page with the controls. */
  readonly touch: (event: Event) => void;
  /** Before something comes or goes. */
  readonly take: () => void;
  /** After it has been drawn. */
  readonly release: () => void;
}

export function useHold(): Hold {
  const touched = useRef<Element>();
  const held = useRef<{ element: Element; top: number }>();
  return {
    touch: ({ target }) => {
      if (target instanceof Element) touched.current = target.closest('.control, details, .item') ?? target;
    },
    take: () => {
      const element = touched.current;
      if (!element?.isConnected) return;
      const { top, bottom } = element.getBoundingClientRect();
      if (bottom > 0 && top < innerHeight) held.current = { element, top };
    },
    release: () => {
      if (!held.current) return;
      const { element, top } = held.current;
      held.current = undefined;
      const moved = element.getBoundingClientRect().top - top;
      if (element.isConnected && Math.abs(moved) > 1) scrollBy({ top: moved, behavior: 'instant' });
    },
  };
}
