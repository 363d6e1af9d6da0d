/** A button that goes on while it is held: after a moment again and again. A short press, a key or a reader's click acts once. */
import { useEffect, useRef } from 'preact/hooks';

/** Before it repeats, and between two times, ms. */
const [pause, between] = [400, 90];

export function useRepeat(action: () => void) {
  const latest = useRef(action);
  latest.current = action;
  const timer = useRef<ReturnType<typeof setTimeout>>();
  /** The click that ends a long press must not act once more. */
  const repeated = useRef(false);
  const stop = () => clearTimeout(timer.current);
  useEffect(() => stop, []);
  const again = (wait: number) => {
    timer.current = setTimeout(() => {
      repeated.current = true;
      latest.current();
      again(between);
    }, wait);
  };
  return {
    onPointerDown: ({ button, isPrimary }: PointerEvent) => {
      repeated.current = false;
      stop();
      if (button === 0 && isPrimary) again(pause);
    },
    onPointerUp: stop,
    onPointerLeave: stop,
    onPointerCancel: stop,
    // A long press with a finger would open the menu of the browser.
    onContextMenu: (event: Event) => event.preventDefault(),
    onClick: () => {
      stop();
      if (!repeated.current) latest.current();
      repeated.current = false;
    },
  };
}
