/**
 * A value that follows another: at once while that is cheap, else as soon as the hand rests for a moment.
 * So a fast machine redraws everything while a slider moves, and a slow phone keeps the slider itself in time.
 */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

/** What may be spent on following in one frame of a sixtieth of a second, ms. */
const cheap = 8;
/** How long the hand rests, ms. */
const rest = 90;

export function useFollower<Value>(source: ReadonlySignal<Value>): ReadonlySignal<Value> {
  const follower = useSignal(source.peek());
  useEffect(() => {
    let cost = 0;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const follow = (value: Value) => {
      const start = performance.now();
      follower.value = value;
      // Preact draws in a microtask, before any timer: what has passed by then is what following cost.
      setTimeout(() => {
        cost = performance.now() - start;
      });
    };
    const stop = source.subscribe((value) => {
      clearTimeout(timer);
      if (value === follower.peek()) return;
      if (cost <= cheap) follow(value);
      else timer = setTimeout(() => follow(value), rest);
    });
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [source]);
  return follower;
}
