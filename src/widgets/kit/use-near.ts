/** Whether an element is on the screen or near it. Everything counts as near before the page is awake, and in print. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** How far off the screen still counts as near: about half a phone's height. */
const margin = '400px';

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
