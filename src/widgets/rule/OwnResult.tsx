/** A number of the reader's box that no rule judges: large, with what sets it. */
import { sayOf } from '../../box/core/result.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { OwnUnits } from '../kit/late/OwnUnits.tsx';
import type { Store } from '../kit/use-store.ts';
import { ChangeBy } from './ChangeBy.tsx';

interface Props {
  name: ResultName;
  store: Store;
  model: Model;
}

/** Inputs that are named beside it. */
const most = 2;

/** Nothing where this box has no such number. */
export function OwnResult({ name, store, model }: Props) {
  const values = store.values.value;
  const row = model.results[name]!;
  const has = row.when?.(values) ?? true;
  if (!has) return null;
  return (
    <div class="answer own-result" data-result={name}>
      <p class="answer-label">
        <OwnUnits of={row.label} />
      </p>
      <p class="answer-number">
        <Quantity value={values[name]} {...sayOf(row)} />
      </p>
      <ChangeBy row={row} values={values} model={model} most={most} />
    </div>
  );
}
