/** Every number that follows from the box, each with its reason; drawn only while it is open. */
import { wholeModel } from '../../box/evaluate.ts';
import type { ResultName } from '../../box/values.ts';
import type { Store } from '../../notebook/use-store.ts';
import { ResultLine } from '../ResultLine.tsx';
import { useOpen } from '../use-open.ts';

const names = Object.keys(wholeModel.results) as ResultName[];

export function AllNumbers({ store }: { store: Store }) {
  const { open, fold } = useOpen();
  return (
    <details class="all-numbers" {...fold}>
      <summary>{names.length} numbers, each with its “why?”</summary>
      {open.value &&
        names.map((name) => (
          <ResultLine key={name} model={wholeModel} name={name} values={store.values} units={store.units} />
        ))}
    </details>
  );
}
