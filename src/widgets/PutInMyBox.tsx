/** The end of a lesson: its inputs for the reader's own box, and what its rules say about them. */

import { verdicts } from '../box/checks/index.ts';
import type { ChoiceName, NumberName } from '../box/fields.ts';
import { useStore } from '../notebook/use-store.ts';
import { Control } from './Control.tsx';
import { VerdictLine } from './VerdictLine.tsx';

export interface Props {
  inputs: readonly (NumberName | ChoiceName)[];
  rules: readonly string[];
}

export default function PutInMyBox({ inputs, rules }: Props) {
  const store = useStore();
  return (
    <section class="put-in-my-box">
      <h2>Put it in my box</h2>
      <div class="controls">
        {inputs.map((name) => (
          <Control key={name} name={name} store={store} />
        ))}
      </div>
      <ul class="verdicts">
        {verdicts(store.values.value)
          .filter(({ check }) => rules.includes(check.rule))
          .map((verdict) => (
            <VerdictLine key={verdict.check.rule + verdict.check.label} verdict={verdict} />
          ))}
      </ul>
      <p>
        <a href={`${import.meta.env.BASE_URL}my-box/`}>See my whole box</a>
      </p>
    </section>
  );
}
