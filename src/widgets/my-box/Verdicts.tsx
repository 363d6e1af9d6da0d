/** What the rules say of a design: every verdict with what would change it, and how many are kept. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { verdicts } from '../../box/subjects/index.ts';
import { countOf, worstFirst } from '../kit/told.tsx';
import type { Store } from '../kit/use-store.ts';
import { VerdictLine } from '../kit/VerdictLine.tsx';
import { VerdictActions } from './VerdictActions.tsx';

export function Verdicts({ design, store }: { design: Design; store: Store }) {
  const judged = verdicts(design.values).sort(worstFirst);
  const list = useRef<HTMLUListElement>(null);
  /** Id of the check whose verdict the reader has just changed: it may move in the list, and lose the focus by that. */
  const changed = useRef<string>();
  const lead = () => list.current?.querySelector<HTMLElement>(`[data-check="${changed.current}"]`)?.focus();
  useLayoutEffect(() => {
    if (changed.current && document.activeElement === document.body) lead();
    changed.current = undefined;
  }, [design]);
  return (
    <ul class="verdicts" ref={list}>
      {judged.map((verdict) => (
        <VerdictLine key={verdict.check.id} verdict={verdict}>
          {(verdict.state === 'unusual' || verdict.state === 'breaks') && (
            <VerdictActions
              verdict={verdict}
              store={store}
              onChanged={() => {
                changed.current = verdict.check.id;
                lead();
              }}
            />
          )}
        </VerdictLine>
      ))}
    </ul>
  );
}

/** How many rules are kept, in one line. */
export function VerdictCount({ design }: { design: Design }) {
  return <p class="says">{countOf(verdicts(design.values))}.</p>;
}
