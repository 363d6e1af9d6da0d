/** What the rules say of a design: every verdict with what would change it, and how many are kept. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Verdict } from '../../box/core/verdict.ts';
import type { Design } from '../../box/design/design.ts';
import { type ResultName, type Values, verdicts, wholeModel } from '../../box/subjects/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { countOf, worstFirst } from '../kit/told.tsx';
import type { Store } from '../kit/use-store.ts';
import { VerdictLine } from '../kit/VerdictLine.tsx';
import { VerdictActions } from './VerdictActions.tsx';
import { WhyThisNumber } from './WhyThisNumber.tsx';

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
          <WhyJudged verdict={verdict} values={design.values} units={store.units.value} />
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

/** Why the number that is judged is what it is; an input of the reader's own needs no reason. */
function WhyJudged({
  verdict: { check },
  values,
  units,
}: {
  verdict: Verdict<Values>;
  values: Values;
  units: UnitSystem;
}) {
  const row = wholeModel.results[check.of as ResultName];
  return row && <WhyThisNumber label={check.label} working={() => row.work(values)} units={units} />;
}

/** How many rules are kept, in one line. */
export function VerdictCount({ design }: { design: Design }) {
  return <p class="says">{countOf(verdicts(design.values))}.</p>;
}
