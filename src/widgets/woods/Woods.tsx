/** All woods with a figure: sort, filter, pick up to four to compare, a scatter plot, and what it means for a panel. */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { allWoods } from '../../box/wood/all-woods.ts';
import type { Wood } from '../../calc/core/wood.ts';
import { useStore } from '../kit/use-store.ts';
import { Comparison } from './Comparison.tsx';
import { columns, mark } from './columns.ts';
import { WoodPicture } from './WoodPicture.tsx';
import { WoodTable } from './WoodTable.tsx';

const most = 4;

/** Where the figures of a wood come from, for the filter. */
const groups = ['hardwood', 'softwood', 'imported'] as const;

export default function Woods() {
  const { values, units } = useStore();
  const words = useSignal('');
  const group = useSignal('');
  const readOnly = useSignal(false);
  const sort = useSignal({ key: 'name', down: false });
  const picked = useSignal<readonly string[]>([]);
  const marked = useSignal<string | undefined>(undefined);
  const id = useId();

  /** The reader's own wood is the first to compare. */
  useEffect(() => {
    picked.value = [values.value.species];
    marked.value = values.value.species;
  }, []);

  const shown = useComputed(() => {
    const asked = words.value.trim().toLowerCase();
    const listed = allWoods.filter(
      (wood) =>
        (!asked ||
          `${wood.name} ${wood.tableName} ${wood.botanicalName ?? ''}`.toLowerCase().includes(asked)) &&
        (!group.value || wood.group === group.value) &&
        (!readOnly.value || (wood.tangentialCoefficient && mark[wood.tangentialCoefficient.status] !== 'm')),
    );
    const { key, down } = sort.value;
    const column = columns.find((one) => one.key === key);
    const sign = down ? -1 : 1;
    const byName = (a: Wood, b: Wood) => a.tableName.localeCompare(b.tableName, 'en');
    return [...listed].sort((a, b) => {
      if (!column) return sign * byName(a, b);
      const [first, second] = [column.figure(a)?.value, column.figure(b)?.value];
      // Woods without the figure stand last, whichever way the column is sorted.
      if (first === undefined || second === undefined)
        return Number(first === undefined) - Number(second === undefined);
      return sign * (first - second) || byName(a, b);
    });
  });

  const pick = (wood: string) => {
    picked.value = picked.value.includes(wood)
      ? picked.value.filter((one) => one !== wood)
      : picked.value.length < most
        ? [...picked.value, wood]
        : picked.value;
  };

  return (
    <>
      <search>
        <form class="finder" onSubmit={(event) => event.preventDefault()}>
          <p>
            <label for={`${id}w`}>words</label>
            <input
              id={`${id}w`}
              type="search"
              value={words.value}
              onInput={(event) => {
                words.value = event.currentTarget.value;
              }}
            />
          </p>
          <p>
            <label for={`${id}g`}>group</label>
            <select
              id={`${id}g`}
              value={group.value}
              onChange={(event) => {
                group.value = event.currentTarget.value;
              }}
            >
              <option value="">any</option>
              {groups.map((one) => (
                <option key={one} value={one}>
                  {one}
                </option>
              ))}
            </select>
          </p>
          <p>
            <label>
              <input
                type="checkbox"
                checked={readOnly.value}
                onChange={(event) => {
                  readOnly.value = event.currentTarget.checked;
                }}
              />{' '}
              only with movement that was read or derived
            </label>
          </p>
          <p role="status" class="found">
            {shown.value.length} woods
          </p>
        </form>
      </search>

      <WoodPicture
        woods={shown.value}
        marked={marked.value}
        onMark={(wood) => {
          marked.value = wood;
        }}
        picked={picked.value}
        onPick={pick}
      />

      <Comparison
        woods={picked.value.flatMap((one) => allWoods.find((wood) => wood.id === one) ?? [])}
        values={values.value}
        system={units.value}
        onRemove={pick}
      />

      <h2>The table</h2>
      <p class="help">
        Behind a figure: d is derived here from published figures, m is from memory and not checked; no mark
        is read. Averages over several species are named as groups. Tick up to {most} woods to compare them.
      </p>
      <WoodTable
        woods={shown.value}
        sort={sort.value}
        onSort={(key) => {
          sort.value = { key, down: sort.value.key === key ? !sort.value.down : false };
        }}
        picked={picked.value}
        full={picked.value.length >= most}
        onPick={pick}
      />
    </>
  );
}
