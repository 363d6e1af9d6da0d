/**
 * How work waits that a slider need not wait for: until it is cheap, until the hand rests, or until it is near the screen.
 */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** What may be spent on following in one frame of a sixtieth of a second, ms. */
const cheap = 8;
/** How long a hand stays still before it counts as resting, ms. */
const rest = 90;

/**
 * A value that follows another: at once while that is cheap, else as soon as the hand rests for a moment. So a fast machine
 * redraws everything while a slider moves, and a slow phone keeps the slider itself in time.
 */
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

/** The last value at which the hand has rested; the first one counts at once. @param still ms without another value */
export function useRested<Value>(value: Value, still = rest): Value {
  const rested = useSignal(value);
  useEffect(() => {
    if (rested.peek() === value) return undefined;
    const timer = setTimeout(() => {
      rested.value = value;
    }, still);
    return () => clearTimeout(timer);
  }, [value]);
  return rested.value;
}

/** How far off the screen still counts as near: about half a phone's height. */
const margin = '400px';

/** Whether an element is on the screen or near it. Everything counts as near before the page is awake, and in print. */
export function useNear() {
  const ref = useRef<HTMLElement>(null);
  const near = useSignal(true);
  useEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const watcher = new IntersectionObserver(
      (entries) => {
        near.value = entries.some(({ isIntersecting }) => isIntersecting);
      },
      { rootMargin: margin },
    );
    watcher.observe(element);
    const show = () => {
      near.value = true;
    };
    addEventListener('beforeprint', show);
    return () => {
      watcher.disconnect();
      removeEventListener('beforeprint', show);
    };
  }, []);
  return { ref, near };
}
