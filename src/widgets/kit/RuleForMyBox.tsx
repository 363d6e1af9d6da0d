/** What one rule says about the reader's box, on the rule's own page. */

import { verdictsOf } from '../../box/core/verdict.ts';
import type { Model } from '../../box/subjects/model.ts';
import { href } from './href.ts';
import { useStore } from './use-store.ts';
import { VerdictLine } from './VerdictLine.tsx';

export function RuleForMyBox({ model, rule }: { model: Model; rule: string }) {
  const { values } = useStore(model);
  const found = verdictsOf(model.checks, values.value).filter(({ check }) => check.rule === rule);
  if (found.length === 0) return null;
  return (
    <section class="for-my-box" aria-label="For my box">
      <p>
        For <a href={href('my-box/')}>my box</a> ({values.value.name}):
      </p>
      <ul class="verdicts">
        {found.map((verdict) => (
          <VerdictLine key={verdict.check.id} verdict={verdict} />
        ))}
      </ul>
    </section>
  );
}
