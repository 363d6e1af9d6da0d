/** Every number that follows from the box, each with its reason. */
import { useComputed } from '@preact/signals';
import type { Result } from '../../box/core/result.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import { wholeModel } from '../../box/whole/index.ts';
import { ResultLine } from '../kit/ResultLine.tsx';
import type { Store } from '../kit/use-store.ts';

const rows = Object.entries(wholeModel.results) as [ResultName, Result<Values>][];

export function AllNumbers({ store }: { store: Store }) {
  // A sawn lid has no play in side grooves: what this box does not have is not listed.
  const names = useComputed(() =>
    rows
      .filter(([, row]) => row.when?.(store.values.value) ?? true)
      .map(([name]) => name)
      .join(),
  ).value.split(',') as ResultName[];
  return (
    <>
      {names.map((name) => (
        <ResultLine key={name} model={wholeModel} name={name} values={store.values} units={store.units} />
      ))}
    </>
  );
}
