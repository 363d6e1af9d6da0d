/** The state of the checks in a line under the drawing on a phone: it leads to all warnings. */
import type { ReadonlySignal } from '@preact/signals';
import { Mark } from '../verdicts/Mark.tsx';
import type { Bench } from './bench-state.ts';
import { Turn } from './Turn.tsx';
import { countOf, type Judged } from './warnings.ts';

interface Props {
  of: ReadonlySignal<Judged>;
  bench: Bench;
  /** Whether all warnings are in sight. */
  open: boolean;
  onAll: () => void;
}

export function CheckState({ of, bench, open, onAll }: Props) {
  const judged = of.value;
  const { breaks, looks } = countOf(judged.warnings);
  const state = breaks > 0 ? 'breaks' : looks > 0 ? 'look' : 'kept';
  return (
    <div class="check-state">
      {state === 'kept' ? (
        <span class="chip kept">
          <Mark of="kept" /> works,{' '}
          {judged.accepted.length + judged.unknown.length === 0 ? 'all rules kept' : 'nothing broken'}
        </span>
      ) : (
        <button type="button" class={`chip ${state}`} aria-expanded={open} onClick={onAll}>
          {breaks > 0 ? (
            <>
              <Mark of="breaks" /> {breaks} broken
            </>
          ) : (
            'works'
          )}
          {looks > 0 && (
            <>
              , <Mark of="look" /> {looks} to look at
            </>
          )}
        </button>
      )}
      <span class="kept-count">{judged.kept.length} kept</span>
      <Turn bench={bench} />
    </div>
  );
}
