/** What will happen when a file is brought in, before it happens: put to what is here, or in its place. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import {
  mergeNotebooks,
  type Notebook,
  type PlanLine,
  planOf,
} from '../../notebook/everything/everything.ts';

export interface Brought {
  /** Of the file. */
  readonly name: string;
  readonly made: string;
  readonly kept: Notebook;
  readonly unknown: number;
}

interface Props {
  brought: Brought;
  now: Notebook;
  onBring: (next: Notebook, done: string) => void;
  onLeave: () => void;
}

const cell = (count: number, single: boolean) => (count === 0 ? '–' : single ? '✓' : count);
/** For the ear: a dash and a tick say little. */
const heard = (count: number, single: boolean) => (single ? (count === 0 ? 'none' : 'one') : `${count}`);

function Count({ of, line: { single } }: { of: number; line: PlanLine }) {
  return (
    <td>
      <span aria-hidden="true">{cell(of, single)}</span>
      <span class="heard">{heard(of, single)}</span>
    </td>
  );
}

export function Preview({ brought, now, onBring, onLeave }: Props) {
  const name = useId();
  const instead = useSignal(false);
  const { kept, leftOut } = instead.value
    ? { kept: brought.kept, leftOut: {} }
    : mergeNotebooks(now, brought.kept);
  const lines = planOf(now, brought.kept, kept);
  const out = Object.entries(leftOut).map(
    ([key, count]) => `${lines.find((line) => line.key === key)?.name ?? key}: ${count}`,
  );
  return (
    <div class="preview">
      <h3 tabIndex={-1}>What {brought.name} brings</h3>
      <p>
        {brought.made && `It was saved on ${brought.made}. `}
        {brought.unknown > 0 &&
          `${brought.unknown === 1 ? 'One thing in it is' : `${brought.unknown} things in it are`} from a newer version and not brought in. `}
        Nothing is changed yet.
      </p>
      <fieldset>
        <legend>How shall it come in?</legend>
        <label>
          <input
            type="radio"
            name={name}
            checked={!instead.value}
            onChange={() => {
              instead.value = false;
            }}
          />
          put it to mine: nothing of mine goes
        </label>
        <label>
          <input
            type="radio"
            name={name}
            checked={instead.value}
            onChange={() => {
              instead.value = true;
            }}
          />
          in the place of mine: what is not in the file goes
        </label>
      </fieldset>
      <table>
        <thead>
          <tr>
            <th scope="col">what</th>
            <th scope="col">here now</th>
            <th scope="col">in the file</th>
            <th scope="col">afterwards</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.key}>
              <th scope="row">{line.name}</th>
              <Count of={line.now} line={line} />
              <Count of={line.file} line={line} />
              <Count of={line.after} line={line} />
            </tr>
          ))}
        </tbody>
      </table>
      {!instead.value && (
        <p class="help">
          Where only one can be, yours stays; the box of the file then stands among the kept designs. Two
          notes at one place stand one below the other.
        </p>
      )}
      {out.length > 0 && <p>There is no room for some of it, which stays in the file ({out.join(', ')}).</p>}
      <p>
        <button
          type="button"
          onClick={() =>
            onBring(
              kept,
              instead.value ? 'The file stands in the place of yours.' : 'The file is put to yours.',
            )
          }
        >
          bring it in
        </button>{' '}
        <button type="button" class="quiet" onClick={onLeave}>
          leave it
        </button>
      </p>
    </div>
  );
}
