/** What cannot be built, the first impossible thing first, each with the change that mends it. */

import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Refusal } from '../../box/design/refusal.ts';
import type { Store } from '../kit/use-store.ts';

export function Refusals({ refusals, store }: { refusals: readonly Refusal[]; store: Store }) {
  const heading = useRef<HTMLHeadingElement>(null);
  /** The heading stays while the reader is on it, also when nothing is left under it. */
  const mended = useSignal(false);
  if (refusals.length === 0 && !mended.value) return null;
  return (
    <section class="refusals" aria-label="What cannot be built">
      <h2
        class="step"
        role="status"
        tabIndex={-1}
        ref={heading}
        onBlur={() => {
          mended.value = false;
        }}
      >
        {refusals.length === 0 ? 'It can be built now' : 'This cannot be built yet'}
        {refusals.length > 1 && `, for ${refusals.length} reasons`}
      </h2>
      <ul>
        {refusals.map(({ id, what, fix, field, to }) => (
          <li key={id}>
            {what} {fix}{' '}
            {field !== undefined && to !== undefined && (
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  // The row goes with its reason: what is left comes next.
                  heading.current?.focus();
                  mended.value = true;
                  store.set({ [field]: to });
                }}
              >
                fix it
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
