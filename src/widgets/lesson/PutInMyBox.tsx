/** The end of a lesson: its inputs for the reader's own box, and what its rules say about them. */

import { verdictsOf } from '../../box/core/verdict.ts';
import type { ChoiceName, NumberName } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import { Control } from '../kit/Control.tsx';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { VerdictLine } from '../kit/VerdictLine.tsx';

export interface Props {
  inputs: readonly (NumberName | ChoiceName)[];
  rules: readonly string[];
}

export function PutInMyBox({ model, inputs, rules }: Props & { model: Model }) {
  const store = useStore(model);
  return (
    <section class="put-in-my-box" ref={store.ref}>
      <h2>Put it in my box</h2>
      <div class="controls">
        {inputs.map((name) => (
          <Control key={name} name={name} store={store} />
        ))}
      </div>
      <ul class="verdicts">
        {verdictsOf(model.checks, store.values.value)
          .filter(({ check }) => rules.includes(check.rule))
          .map((verdict) => (
            <VerdictLine key={verdict.check.id} verdict={verdict} />
          ))}
      </ul>
      <p>
        <a href={href('my-box/')}>See my whole box</a>
      </p>
    </section>
  );
}
