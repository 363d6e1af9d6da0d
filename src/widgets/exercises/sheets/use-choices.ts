/** What is chosen for the sheets: what the link asks for, else what was kept last, else a start; and what is changed since. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { loadSheets, type SheetChoices, sheetChoices } from '../../../notebook/learning/sheets.ts';
import { units } from '../../../notebook/units.ts';
import type { Listed, ListedBlock } from './form.ts';

export interface Offered {
  exercises: readonly Listed[];
  blocks: readonly ListedBlock[];
}

const start: Omit<SheetChoices, 'system' | 'paper'> = {
  className: '',
  learners: 12,
  print: 'both',
  exercises: [],
};

/**
 * What is chosen so far, with the text of the number as it was typed.
 * @param changing told before a choice changes
 */
export function useChoices({ exercises, blocks }: Offered, changing: () => void) {
  const changed = useSignal<Partial<SheetChoices>>({});
  const learners = useSignal<string | undefined>(undefined);
  const live = useSignal(false);
  useEffect(() => {
    loadSheets();
    const asked = new URLSearchParams(location.search).get('block');
    const block = blocks.find(({ id }) => id === asked);
    if (block) changed.value = { exercises: block.exercises };
    live.value = true;
  }, []);
  const kept = live.value ? sheetChoices.value : undefined;
  // A page is built for nobody: whose units they are is known once it is awake.
  const system = changed.value.system ?? kept?.system ?? (live.value ? units.value : 'mm');
  // At first those of the first block: all of them are many pages.
  const known = (kept ?? blocks[0] ?? start).exercises;
  return {
    now: {
      ...start,
      ...kept,
      paper: kept?.paper ?? (system === 'mm' ? 'A4' : 'Letter'),
      exercises: known.filter((id) => exercises.some((one) => one.id === id)),
      ...changed.value,
      system,
    } satisfies SheetChoices,
    learners: learners.value ?? String(kept?.learners ?? start.learners),
    type: (text: string) => {
      changing();
      learners.value = text;
    },
    change: (what: Partial<SheetChoices>) => {
      changing();
      changed.value = { ...changed.value, ...what };
    },
  };
}
