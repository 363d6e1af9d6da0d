/** The bar at the foot of a phone: the part before, the chosen one with a list of all, the next one, and the way to ask. */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Values } from '../../box/whole/index.ts';
import type { Count } from '../verdicts/Mark.tsx';
import { CountMark } from '../verdicts/Mark.tsx';
import { Arrow } from './Arrow.tsx';
import { PartSize } from './PartSize.tsx';
import { nameOfPart, type PartOfBench, partsOfBench } from './parts.ts';

interface Props {
  part: PartOfBench;
  shown: ReadonlySignal<Values>;
  counts: ReadonlySignal<(part: PartOfBench) => Count>;
  onPart: (part: PartOfBench) => void;
}

/** Names short enough for a third of a phone's width. */
const short: Partial<Record<PartOfBench, string>> = { air: 'wood', board: 'board', accuracy: 'accuracy' };
const shortName = (part: PartOfBench) => short[part] ?? nameOfPart[part];

export function PartBar({ part, shown, counts, onPart }: Props) {
  const list = useRef<HTMLDialogElement>(null);
  const open = useSignal(false);
  const at = partsOfBench.indexOf(part);
  const beside = (by: 1 | -1) =>
    partsOfBench[(at + by + partsOfBench.length) % partsOfBench.length] as PartOfBench;
  const [before, after] = [beside(-1), beside(1)];
  return (
    <>
      <nav class="part-bar" aria-label="One part after the other">
        <button type="button" class="quiet bare" onClick={() => onPart(before)}>
          <Arrow to="left" />
          <span class="heard">back to </span>
          {shortName(before)}
        </button>
        <button
          type="button"
          class="quiet bare current"
          aria-haspopup="dialog"
          onClick={() => {
            open.value = true;
            list.current?.showModal();
          }}
        >
          {shortName(part)}
          <Arrow to="up" />
          <span class="heard">, all parts</span>
        </button>
        <button type="button" class="quiet bare" onClick={() => onPart(after)}>
          <span class="heard">on to </span>
          {shortName(after)}
          <Arrow to="right" />
        </button>
      </nav>
      <dialog
        class="part-list"
        ref={list}
        aria-label="Parts of the box"
        onClose={() => {
          open.value = false;
        }}
      >
        <form method="dialog">
          <h2>Parts of the box</h2>
          <button type="submit" class="quiet bare">
            close
          </button>
        </form>
        {open.value && (
          <List
            part={part}
            shown={shown}
            counts={counts}
            onPart={(one) => {
              list.current?.close();
              onPart(one);
            }}
          />
        )}
      </dialog>
    </>
  );
}

const List = ({ part, shown, counts, onPart }: Props) => (
  <ul>
    {partsOfBench.map((one) => (
      <li key={one}>
        <button
          type="button"
          class="quiet bare"
          aria-current={one === part ? 'true' : undefined}
          onClick={() => {
            onPart(one);
          }}
        >
          <span class="name">{nameOfPart[one]}</span>
          <CountMark count={counts.value(one)} />
          <span class="size">
            <PartSize part={one} values={shown.value} />
          </span>
        </button>
      </li>
    ))}
  </ul>
);
