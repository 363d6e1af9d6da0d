/** Whether the page is laid out for a phone; as wide until it is awake. Keep in step with `styles/my-box.css`. */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

export function useNarrow(): ReadonlySignal<boolean> {
  const narrow = useSignal(false);
  useEffect(() => {
    const query = matchMedia('(max-width: 62rem)');
    const follow = () => {
      narrow.value = query.matches;
    };
    follow();
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return narrow;
}
