/** What takes everything along, brings it in and erases it: fetched late, since it knows every key of the store. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useFetched } from './use-fetched.ts';

export function KeepAllHere() {
  const awake = useSignal(false);
  useEffect(() => {
    awake.value = true;
  }, []);
  const { found, ask } = useFetched(
    () => import('./KeepAll.tsx').then(({ KeepAll }) => ({ KeepAll })),
    awake.value,
  );
  if (typeof found === 'object') return <found.KeepAll />;
  return (
    <p role="status">
      {found === 'missing' && (
        <>
          What takes your notebook along could not be fetched.{' '}
          <button type="button" class="quiet" onClick={ask}>
            try again
          </button>
        </>
      )}
    </p>
  );
}
