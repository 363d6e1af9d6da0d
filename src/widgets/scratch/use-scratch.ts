/** The cells at work: the worker that computes them, what it tells, and the words of relations. Nothing is fetched before `use`. */
import { type ReadonlySignal, signal, useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { currentBox, loadBox } from '../../notebook/current.ts';
import { loadScratch } from '../../notebook/scratch/brought.ts';
import { isUsed, type KeptCell, scratch } from '../../notebook/scratch/kept.ts';
import type { Listed } from '../../notebook/scratch/listed.ts';
import { runner } from '../../notebook/scratch/run.ts';
import type { CellResult } from '../../notebook/scratch/sheet.ts';
import { fetchReasons, reasons } from '../kit/reasons.ts';
import { type Offer, offerOf, ownNames } from './complete.ts';

/**
 * How long results wait, ms: a press outside a field ends the typing there, and what the cell then says must not move what
 * is being pressed.
 */
export const afterPress = 200;

export interface AtWork {
  readonly names: ReadonlySignal<readonly Listed[]>;
  readonly results: ReadonlySignal<ReadonlyMap<number, CellResult>>;
  readonly offers: ReadonlySignal<readonly Offer[]>;
  readonly missing: ReadonlySignal<boolean>;
  /** Fetches what works cells out, if it is not there yet, and works them out. */
  readonly use: () => void;
}

/** What a number, a function or a relation is, in a few words. */
export const meaningOf = (listed: Listed): string =>
  listed.type === 'relation' ? (reasons.value[listed.id]?.title ?? 'relation') : listed.meaning;

/** @param besides a cell that is worked out behind the kept ones, and not kept itself */
export function useScratch(besides?: () => KeptCell | undefined): AtWork {
  const names = useSignal<readonly Listed[]>([]);
  const results = useSignal<ReadonlyMap<number, CellResult>>(new Map());
  const missing = useSignal(false);
  const inUse = useRef(signal(false)).current;
  const works = useRef<ReturnType<typeof runner>>();

  const run = () => {
    works.current ??= runner({
      names: (told) => {
        missing.value = false;
        names.value = told;
      },
      result: (id, result) => {
        missing.value = false;
        results.value = new Map([...results.value, [id, result]]);
      },
      missing: () => {
        missing.value = true;
      },
    });
    const more = besides?.();
    const cells = more ? [...scratch.peek(), more] : scratch.peek();
    works.current.run({
      box: currentBox.peek(),
      cells: cells.map(({ cell }) => cell),
      ids: cells.map(({ id }) => id),
      words: Object.fromEntries(
        Object.entries(reasons.peek()).map(([id, { names: of }]) => [id, { names: of }]),
      ),
    });
  };
  const use = () => {
    if (inUse.peek() && !missing.peek()) return;
    // Without the words the symbols of relations stand alone; the numbers are the same.
    void fetchReasons().then(() => {
      if (inUse.peek()) run();
      else inUse.value = true;
    });
  };

  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    loadBox();
    loadScratch();
    if (isUsed()) use();
    const stop = inUse.subscribe((is) => {
      if (!is) return;
      let first = true;
      const follow = () => {
        clearTimeout(timer);
        if (!first) timer = setTimeout(run, afterPress);
      };
      stops.push(scratch.subscribe(follow), currentBox.subscribe(follow));
      first = false;
      run();
    });
    const stops: (() => void)[] = [stop, scratch.subscribe(() => isUsed() && use())];
    return () => {
      clearTimeout(timer);
      for (const end of stops) end();
      works.current?.end();
    };
  }, []);

  const offers = useComputed(() => [
    ...ownNames(scratch.value.map(({ cell }) => (cell.type === 'note' ? '' : cell.text))),
    ...names.value.map((listed) => offerOf(listed, meaningOf(listed))),
  ]);
  return { names, results, offers, missing, use };
}
