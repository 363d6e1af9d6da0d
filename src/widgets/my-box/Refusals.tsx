/** What cannot be built, the first impossible thing first, each with the change that mends it. */
import type { Refusal } from '../../box/parts/refusal.ts';
import type { Store } from '../../notebook/use-store.ts';

export function Refusals({ refusals, store }: { refusals: readonly Refusal[]; store: Store }) {
  if (refusals.length === 0) return null;
  return (
    <section class="refusals" role="status" aria-label="What cannot be built">
      <h2 class="step">This cannot be built yet</h2>
      <ul>
        {refusals.map(({ id, what, mend, field, to }) => (
          <li key={id}>
            {what} {mend}{' '}
            {field !== undefined && to !== undefined && (
              <button type="button" class="quiet" onClick={() => store.set({ [field]: to })}>
                mend it
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
