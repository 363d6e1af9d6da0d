/** What one rule says about the reader's box, on the rule's own page: the island of a subject's rules. */
import type { Subject } from '../../box/core/subject.ts';
import { verdictsOf } from '../../box/core/verdict.ts';
import type { Values } from '../../box/subjects/index.ts';
import { modelOf } from '../../box/subjects/model.ts';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { VerdictLine } from '../kit/VerdictLine.tsx';

export function ruleOf(subject: Subject<string, Values>) {
  const model = modelOf(subject);
  return function RuleForMyBox({ rule }: { rule: string }) {
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
  };
}
