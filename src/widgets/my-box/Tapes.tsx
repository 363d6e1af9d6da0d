/**
 * The warnings on the bench. One that is mended leaves its place, as high as it was, until another part is chosen: so
 * nothing moves under the hand. Warnings that one change mends share a tape.
 */
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useLead } from '../kit/use-lead.ts';
import type { Store } from '../kit/use-store.ts';
import { Mark } from '../verdicts/Mark.tsx';
import type { Mends } from './find-mends.ts';
import { isSame, type Mend } from './mend.ts';
import { nameOfPart, type PartOfBench } from './parts.ts';
import { Tape } from './Tape.tsx';
import type { Warning } from './warnings.ts';

interface Place {
  readonly id: string;
  readonly part: PartOfBench;
  /** Height of its tape as last drawn, px. */
  height: number;
}

interface Props {
  label: string;
  warnings: readonly Warning[];
  mends: Mends;
  isFull: (warning: Warning) => boolean;
  /** Whether it is about another part than the chosen one: a phone shows it elsewhere. */
  isOther?: (warning: Warning) => boolean;
  /** While this stays, places stay. */
  during: string;
  store: Store;
  /** Before a change that the reader makes by pressing. */
  onMend: () => void;
  onPart: (part: PartOfBench) => void;
}

/** Warnings in groups that one change mends. */
function groupsOf(warnings: readonly Warning[], mends: Mends): readonly (readonly Warning[])[] {
  const groups: Warning[][] = [];
  for (const warning of warnings) {
    const mend = mends.get(warning.id)?.[0];
    const group = groups.find(([first]) => {
      const other = mends.get(first!.id)?.[0];
      return mend && other && isSame(mend, other) && !('refusal' in first!) && !('refusal' in warning);
    });
    if (group) group.push(warning);
    else groups.push([warning]);
  }
  return groups;
}

export function Tapes({ label, warnings, mends, isFull, isOther, during, store, onMend, onPart }: Props) {
  const list = useRef<HTMLUListElement>(null);
  const lead = useLead();
  const places = useRef<{ during: string; all: Place[] }>({ during, all: [] });
  const groups = groupsOf(warnings, mends);
  const isThere = (id: string) => warnings.some((one) => one.id === id);
  if (places.current.during !== during) places.current = { during, all: [] };
  // One that has joined another tape needs no place of its own; a new one comes after the one before it.
  const all = places.current.all.filter(
    ({ id }) => !isThere(id) || groups.some(([first]) => first!.id === id),
  );
  let before = -1;
  for (const [first] of groups) {
    const { id, part } = first!;
    const at = all.findIndex((place) => place.id === id);
    if (at < 0) all.splice(before + 1, 0, { id, part, height: 0 });
    before = at < 0 ? before + 1 : at;
  }
  places.current.all = all;
  useLayoutEffect(() => {
    for (const tape of list.current?.children ?? []) {
      const place = places.current.all.find(({ id }) => id === (tape as HTMLElement).dataset.check);
      if (place && !tape.classList.contains('mended')) place.height = (tape as HTMLElement).offsetHeight;
    }
  });
  if (all.length === 0) return null;
  const mend = (id: string, { inputs }: Mend) => {
    lead(() => list.current?.querySelector<HTMLElement>(`[data-check="${id}"]`));
    onMend();
    store.set(inputs);
  };
  return (
    <ul class="tapes" aria-label={label} ref={list}>
      {all.map(({ id, part, height }) => {
        const group = groups.find(([first]) => first!.id === id);
        const [first] = group ?? [];
        const isBrief = first && !isFull(first);
        const look = !first ? 'mended' : first.breaks ? 'breaks' : 'look';
        // One element for both: the reader may be on it when it is mended.
        return (
          <li
            key={id}
            class={`tape ${look} ${isBrief ? 'brief' : ''} ${first && isOther?.(first) ? 'other' : ''}`}
            data-check={id}
            tabIndex={-1}
            style={group ? undefined : { minHeight: `${height}px` }}
          >
            {group ? (
              <Tape
                warnings={group}
                mends={mends.get(id)}
                brief={isBrief ?? false}
                store={store}
                onMend={(one) => mend(id, one)}
                onPart={(warning) => onPart(warning.part)}
              />
            ) : (
              <>
                <Mark of="kept" /> {Object.hasOwn(store.values.value.accepted, id) ? 'accepted' : 'mended'} ·{' '}
                {nameOfPart[part]}
              </>
            )}
          </li>
        );
      })}
    </ul>
  );
}
