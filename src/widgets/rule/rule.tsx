/**
 * What a rule's page says about the reader's box: on top the answer, below it the sums with the numbers of the box. Both
 * are islands of the subject that the rule belongs to; so are the numbers of a trouble.
 */
import type { Subject } from '../../box/core/subject.ts';
import { verdictsOf } from '../../box/core/verdict.ts';
import { modelOf } from '../../box/subjects/model.ts';
import type { Values } from '../../box/whole/index.ts';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { Answer, NotJudged } from './Answer.tsx';
import { Sum, type SumSpec } from './Sum.tsx';
import { TroubleNumbers, type TroubleSpec } from './TroubleNumbers.tsx';

/** With `trouble` it is the numbers of a trouble; with `sums` the sums of a rule, else its answer. */
export interface RuleProps {
  rule?: string | undefined;
  sums?: readonly SumSpec[] | undefined;
  trouble?: TroubleSpec | undefined;
}

export function ruleOf(subject: Subject<string, Values>) {
  const model = modelOf(subject);
  return function RuleForMyBox({ rule, sums, trouble }: RuleProps) {
    const store = useStore(model);
    const values = store.values.value;
    if (trouble)
      return (
        <div class="numbers" ref={store.ref as never}>
          <TroubleNumbers {...trouble} store={store} model={model} />
        </div>
      );
    const checks = model.checks.filter((check) => check.rule === rule);
    const found = verdictsOf(checks, values);
    if (sums)
      return (
        <section class="sums" aria-label="The sum for my box" ref={store.ref}>
          {sums.map((sum) => (
            <Sum
              key={sum.relation}
              {...sum}
              verdicts={found}
              values={values}
              model={model}
              units={store.units.value}
            />
          ))}
        </section>
      );
    return (
      <section class="for-my-box" aria-label="For my box" ref={store.ref}>
        <p class="kicker">
          For <a href={href('my-box/')}>my box</a>: {values.name}
        </p>
        {found.length > 0
          ? found.map((verdict) => (
              <Answer key={verdict.check.id} verdict={verdict} store={store} model={model} />
            ))
          : checks.map((check) => <NotJudged key={check.id} check={check} store={store} />)}
      </section>
    );
  };
}
