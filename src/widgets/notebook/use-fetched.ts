/** Something that is fetched once it is wanted; where it cannot be, that is said, and wanting it anew tries again. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

export function useFetched<Found extends object>(fetchIt: () => Promise<Found>, wanted: boolean) {
  const found = useSignal<Found | 'missing' | undefined>(undefined);
  const ask = () => {
    if (typeof found.peek() === 'object') return;
    found.value = undefined;
    fetchIt().then(
      (got) => {
        found.value = got;
      },
      () => {
        found.value = 'missing';
      },
    );
  };
  useEffect(() => {
    if (wanted) ask();
  }, [wanted]);
  return { found: found.value, ask };
}
