/** Every number that follows from the box, each with its reason; drawn only while it is open. */
import { useSignal } from '@preact/signals';
import { wholeModel } from '../../box/evaluate.ts';
import type { ResultName } from '../../box/values.ts';
import type { Store } from '../../notebook/use-store.ts';
import { ResultLine } from '../ResultLine.tsx';

const names = Object.keys(wholeModel.results) as ResultName[];

export function AllNumbers({ store }: { store: Store }) {
  const open = useSignal(false);
  return (
    <details
      class="all-numbers"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>{names.length} numbers, each with its “why?”</summary>
      {open.value &&
        names.map((name) => (
          <ResultLine key={name} model={wholeModel} name={name} values={store.values} units={store.units} />
        ))}
    </details>
  );
}
