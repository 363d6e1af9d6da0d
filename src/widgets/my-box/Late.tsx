/** A part of the bench that is fetched when it is first asked for; where it cannot be, it says so, and the next opening tries again. */
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';

type Parts = typeof import('./late-parts.ts')['lateParts'];

const parts = signal<Parts | 'missing' | undefined>(undefined);

/** Asks for the parts, unless they are there. */
export function fetchLate(): void {
  if (typeof parts.peek() === 'object') return;
  import('./late-parts.ts').then(
    ({ lateParts }) => {
      parts.value = lateParts;
    },
    () => {
      parts.value = 'missing';
    },
  );
}

/** Fetches the parts before they are asked for, once the reader does anything on the bench. */
export const onFirstTouch = { onPointerDownCapture: fetchLate, onKeyDownCapture: fetchLate };

/** The parts, as soon as they are there; asks for them where `wanted`. */
export function useLate(wanted: boolean): Parts | 'missing' | undefined {
  useEffect(() => {
    if (wanted) fetchLate();
  }, [wanted]);
  return parts.value;
}

export function Late({ children }: { children: (parts: Parts) => ComponentChildren }) {
  const found = useLate(true);
  if (typeof found === 'object') return <>{children(found)}</>;
  return (
    <p role="status">
      {found === 'missing'
        ? 'This part of the page could not be fetched. Close this and open it again when there is a network, or reload the page.'
        : 'One moment …'}
    </p>
  );
}
