/** Every name a cell may use, with its value, unit and meaning, and a filter. It is fetched with the first use. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Listed } from '../../notebook/scratch/listed.ts';
import type { UnitSystem } from '../../units/index.ts';
import { useOpen } from '../kit/use-open.ts';
import { callOf, inOrder, inputsOf, signatureOf } from './said.tsx';
import { type AtWork, meaningOf } from './use-scratch.ts';

const kindsOfNames = {
  all: 'all',
  box: 'my box',
  relation: 'relations',
  wood: 'woods',
  function: 'functions',
} as const;
type KindOfName = keyof typeof kindsOfNames;
const kindOf = ({ name, type }: Listed): KindOfName =>
  type === 'relation'
    ? 'relation'
    : name.startsWith('wood.')
      ? 'wood'
      : name.startsWith('box.')
        ? 'box'
        : 'function';
const most = 25;

interface Props {
  work: AtWork;
  system: UnitSystem;
  /** Puts a name into the cell used last. */
  put: (text: string) => void;
}

export function Names({ work, system, put }: Props) {
  const id = useId();
  const { open, fold } = useOpen();
  const words = useSignal('');
  const kind = useSignal<KindOfName>('all');
  const asked = words.value.trim().toLowerCase().split(/\s+/);
  const found = open.value
    ? work.names.value.filter((listed) => {
        if (kind.value !== 'all' && kindOf(listed) !== kind.value) return false;
        const text = `${listed.name} ${listed.name.replaceAll('.', '')} ${meaningOf(listed)}`.toLowerCase();
        return asked.every((word) => text.includes(word));
      })
    : [];
  return (
    <details
      class="scratch-names"
      ref={fold.ref}
      onToggle={(event) => {
        fold.onToggle(event);
        if (event.currentTarget.open) work.use();
      }}
    >
      <summary>Names you can use</summary>
      {!open.value ? null : work.names.value.length === 0 ? (
        <p role="status">
          {work.missing.value
            ? 'The names could not be fetched. Close this and open it again when there is a network.'
            : 'One moment …'}
        </p>
      ) : (
        <>
          <div class="finder">
            <p>
              <label for={`${id}w`}>find a name</label>
              <input
                id={`${id}w`}
                type="search"
                value={words.value}
                onInput={({ currentTarget }) => {
                  words.value = currentTarget.value;
                }}
              />
            </p>
            <p>
              <label for={`${id}k`}>of</label>
              <select
                id={`${id}k`}
                value={kind.value}
                onChange={({ currentTarget }) => {
                  kind.value = currentTarget.value as KindOfName;
                }}
              >
                {Object.entries(kindsOfNames).map(([key, label]) => (
                  <option key={key} value={key}>
                    {label}
                  </option>
                ))}
              </select>
            </p>
            <p role="status" class="found">
              {found.length} names{found.length > most ? `, the first ${most} shown` : ''}
            </p>
          </div>
          <ul class="name-list">
            {found.slice(0, most).map((listed) => (
              <li key={listed.name}>
                <button
                  type="button"
                  class="quiet"
                  onClick={() => put(listed.type === 'number' ? listed.name : `${listed.name}(`)}
                >
                  {listed.name}
                </button>
                <NameSays listed={listed} system={system} />
              </li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

function NameSays({ listed, system }: { listed: Listed; system: UnitSystem }) {
  if (listed.type === 'function') return <span>{signatureOf(listed)}</span>;
  if (listed.type === 'relation')
    return (
      <>
        <span>{meaningOf(listed)}</span>
        <small>
          {callOf(listed)}: {inputsOf(listed, system)}
        </small>
      </>
    );
  return (
    <>
      <span>{listed.meaning}</span>
      <small>
        {listed.shown ? inOrder(listed.shown, system).join('; ') : 'this box has no such number'}
        {listed.note ? ` (${listed.note})` : ''}
      </small>
    </>
  );
}
