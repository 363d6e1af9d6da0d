/** What one rule says about the reader's box, on the rule's own page. */
import { verdicts } from '../box/checks/index.ts';
import { useStore } from '../notebook/use-store.ts';
import { VerdictLine } from './VerdictLine.tsx';

export default function RuleForMyBox({ rule }: { rule: string }) {
  const { values } = useStore();
  const found = verdicts(values.value).filter(({ check }) => check.rule === rule);
  if (found.length === 0) return null;
  return (
    <section class="for-my-box" aria-label="For my box">
      <p>
        For <a href={`${import.meta.env.BASE_URL}my-box/`}>my box</a> ({values.value.name}):
      </p>
      <ul class="verdicts">
        {found.map((verdict) => (
          <VerdictLine key={verdict.check.label} verdict={verdict} />
        ))}
      </ul>
    </section>
  );
}
