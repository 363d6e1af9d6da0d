/** What rules say of the box, a line each, with the reason of the number that is judged. */
import type { Verdict } from '../../box/core/verdict.ts';
import type { Values } from '../../box/whole/index.ts';
import type { Store } from '../kit/use-store.ts';
import { VerdictLine } from '../kit/VerdictLine.tsx';
import { Accept } from './Accept.tsx';
import { WhyRules } from './WhyRules.tsx';

interface Props {
  verdicts: readonly Verdict<Values>[];
  store: Store;
}

export const RuleLines = ({ verdicts, store }: Props) => (
  <ul class="verdicts">
    {verdicts.map((verdict) => (
      <VerdictLine key={verdict.check.id} verdict={verdict}>
        <WhyRules verdicts={[verdict]} store={store} />
        {(verdict.state === 'unusual' || verdict.state === 'breaks') && (
          <Accept check={verdict.check.id} store={store} />
        )}
      </VerdictLine>
    ))}
  </ul>
);
