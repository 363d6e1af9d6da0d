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
  /** Further ones, folded. */
  more?: readonly (NumberName | ChoiceName)[];
  rules: readonly string[];
}

export function PutInMyBox({ model, inputs, more = [], rules }: Props & { model: Model }) {
  const store = useStore(model);
  const judged = verdictsOf(model.checks, store.values.value).filter(({ check }) =>
    rules.includes(check.rule),
  );
  const kept = judged.filter(({ state }) => state === 'usual');
  const others = judged.filter(({ state }) => state !== 'usual');
  const lines = (verdicts: typeof judged) =>
    verdicts.map((verdict) => <VerdictLine key={verdict.check.id} verdict={verdict} />);
  return (
    <section class="put-in-my-box" ref={store.ref}>
      <h2>Put it in my box</h2>
      <div class="controls">
        {inputs.map((name) => (
          <Control key={name} name={name} store={store} />
        ))}
        {more.length > 0 && (
          <details class="more">
            <summary>more to change</summary>
            {more.map((name) => (
              <Control key={name} name={name} store={store} />
            ))}
          </details>
        )}
      </div>
      <ul class="verdicts">{lines(others)}</ul>
      {kept.length > 0 && (
        <details class="more-of-it">
          <summary>
            {kept.length} {kept.length === 1 ? 'rule is' : 'rules are'} kept
          </summary>
          <ul class="verdicts">{lines(kept)}</ul>
        </details>
      )}
      <p>
        <a href={href('my-box/')}>See my whole box</a>
      </p>
    </section>
  );
}
