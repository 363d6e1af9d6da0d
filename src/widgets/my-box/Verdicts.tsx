/** What the rules say of a design: every verdict with what would change it, and how many are kept. */
import { verdicts } from '../../box/checks/index.ts';
import type { Design } from '../../box/design.ts';
import type { Store } from '../../notebook/use-store.ts';
import { countOf, worstFirst } from '../told.tsx';
import { VerdictLine } from '../VerdictLine.tsx';
import { VerdictActions } from './VerdictActions.tsx';

export function Verdicts({ design, store }: { design: Design; store: Store }) {
  const judged = verdicts(design.values).sort(worstFirst);
  return (
    <ul class="verdicts">
      {judged.map((verdict) => (
        <VerdictLine key={verdict.check.id} verdict={verdict}>
          {(verdict.state === 'unusual' || verdict.state === 'breaks') && (
            <VerdictActions verdict={verdict} store={store} />
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
