/** Why the numbers that rules judge are what they are, behind a fold; an input of the reader's own has the rule alone. */
import type { Verdict } from '../../box/core/verdict.ts';
import { type ResultName, type Values, wholeModel } from '../../box/whole/index.ts';
import { href } from '../kit/href.ts';
import { useReason } from '../kit/ResultLine.tsx';
import type { Store } from '../kit/use-store.ts';

interface Props {
  verdicts: readonly Verdict<Values>[];
  store: Store;
}

export function WhyRules({ verdicts, store }: Props) {
  const { isOpen, fold, Panel } = useReason();
  return (
    <details class="fold why-rules" {...fold}>
      <summary aria-label={`why? ${verdicts.map(({ check }) => check.label).join(', ')}`}>why?</summary>
      {isOpen &&
        verdicts.map(({ check: { id, of, rule, label } }) => {
          const row = wholeModel.results[of as ResultName];
          return row ? (
            Panel && (
              <Panel key={id} working={row.work(store.values.value)} rule={rule} units={store.units.value} />
            )
          ) : (
            <p key={id}>
              You set this number yourself. <a href={href(`rules/${rule}/`)}>The rule on {label}</a> says why
              it has a usual range.
            </p>
          );
        })}
    </details>
  );
}
