/** What is drawn late: once it has been near the screen, or when the page is printed. Never while a page is built. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** How far off the screen still counts as near. */
const margin = '600px';

export function useDrawn() {
  const ref = useRef<HTMLDivElement>(null);
  const drawn = useSignal(false);
  useEffect(() => {
    const draw = () => {
      drawn.value = true;
    };
    const watcher = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) draw();
      },
      { rootMargin: margin },
    );
    watcher.observe(ref.current!);
    addEventListener('beforeprint', draw);
    return () => {
      watcher.disconnect();
      removeEventListener('beforeprint', draw);
    };
  }, []);
  return { ref, drawn: drawn.value };
}
