/** The table of woods: every figure with a mark of how it is known; headings sort. */
import type { Wood } from '../../calc/core/wood.ts';
import { columns, mark } from './columns.ts';

interface Props {
  woods: readonly Wood[];
  sort: { key: string; down: boolean };
  onSort: (key: string) => void;
  picked: readonly string[];
  /** No more woods can be compared. */
  full: boolean;
  onPick: (id: string) => void;
}

export function WoodTable({ woods, sort, onSort, picked, full, onPick }: Props) {
  const direction = (key: string) => (sort.key !== key ? undefined : sort.down ? 'descending' : 'ascending');
  const heading = (key: string, label: string) => (
    <th key={key} scope="col" aria-sort={direction(key)}>
      <button type="button" class="heading" onClick={() => onSort(key)}>
        {label}
        <span aria-hidden="true">{sort.key === key ? (sort.down ? ' ↓' : ' ↑') : ''}</span>
      </button>
    </th>
  );
  return (
    <section class="scroll" aria-label="Table of woods" tabIndex={0}>
      <table class="woods">
        <thead>
          <tr>
            {heading('name', 'wood')}
            {columns.map(({ key, label }) => heading(key, label))}
          </tr>
        </thead>
        <tbody>
          {woods.map((wood) => (
            <tr key={wood.id}>
              <th scope="row">
                <label>
                  <input
                    type="checkbox"
                    checked={picked.includes(wood.id)}
                    disabled={full && !picked.includes(wood.id)}
                    onChange={() => onPick(wood.id)}
                  />{' '}
                  {wood.name}
                </label>
                {wood.isGroup && <small> group of species</small>}
              </th>
              {columns.map(({ key, figure, show }) => {
                const found = figure(wood);
                return (
                  <td key={key}>
                    {found ? show(found.value, 'mm') : '–'}
                    {found && mark[found.status] && <sup>{mark[found.status]}</sup>}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
