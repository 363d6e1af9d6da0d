/** What a trouble's page says about the reader's box: the numbers that tell whether this box is prone to it. */
import { judge } from '../../box/core/verdict.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName } from '../../box/whole/index.ts';
import type { Store } from '../kit/use-store.ts';
import { Answer, NotJudged } from './Answer.tsx';
import { OwnResult } from './OwnResult.tsx';

export interface TroubleSpec {
  /** Ids of checks of one subject, and names of its results, in the order in which they are shown. */
  readonly checks: readonly string[];
  readonly results: readonly ResultName[];
}

export function TroubleNumbers({
  checks,
  results,
  store,
  model,
}: TroubleSpec & { store: Store; model: Model }) {
  const values = store.values.value;
  const own = checks.flatMap((id) => model.checks.find((check) => check.id === id) ?? []);
  const found = own.flatMap((check) => judge(check, values) ?? []);
  return (
    <>
      {found.map((verdict) => (
        <Answer key={verdict.check.id} verdict={verdict} store={store} model={model} />
      ))}
      {found.length === 0 && own.map((check) => <NotJudged key={check.id} check={check} store={store} />)}
      {results.map((name) => (
        <OwnResult key={name} name={name} store={store} model={model} />
      ))}
    </>
  );
}
