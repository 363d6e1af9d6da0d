/** The sheet of scratch cells: sums with units and the names of the box, plots and notes. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Cell } from '../../notebook/scratch/cells.ts';
import { addCell, putBack, scratch, scratchSays, setCell, takenOut } from '../../notebook/scratch/kept.ts';
import { units } from '../../notebook/units.ts';
import { CellRow, fieldId } from './CellRow.tsx';
import { KeepCells } from './KeepCells.tsx';
import { Names } from './Names.tsx';
import { useScratch } from './use-scratch.ts';

const blanks: Readonly<Record<Cell['type'], Cell>> = {
  sum: { type: 'sum', text: '' },
  note: { type: 'note', text: '' },
  plot: { type: 'plot', text: '', over: 'width', from: '', to: '' },
};
const adds = { sum: 'add a cell', note: 'add a note', plot: 'add a plot' } as const;
/** In an empty cell, by its place and the units of the reader. */
const examples = { mm: '300 mm * 0.00274 * 4', inch: '12 in * 0.00274 * 4' };
const plotExample = 'width * box.wood.tangential * 4';

export function Sheet() {
  const work = useScratch();
  const live = useSignal(false);
  /** The cell used last. */
  const last = useRef<number>();
  /** The cell the reader goes on with once it is drawn. */
  const goTo = useSignal<number | undefined>(undefined);
  useEffect(() => {
    live.value = true;
  }, []);
  useEffect(() => {
    if (goTo.value === undefined) return;
    document.getElementById(fieldId(goTo.value))?.focus();
    goTo.value = undefined;
  }, [goTo.value]);
  const system = live.value ? units.value : 'mm';
  const cells = scratch.value;

  const add = (type: Cell['type'], below = last.current) => {
    goTo.value = addCell(blanks[type], below);
  };
  /** After Enter: to the next cell of sums, which is made where there is none. */
  const goOn = (at: number) => {
    const next = cells.slice(at + 1).find(({ cell }) => cell.type !== 'note');
    if (next) goTo.value = next.id;
    else if (scratch.peek()[at]?.cell.text.trim()) add('sum', cells[at]!.id);
  };
  const put = (text: string) => {
    const target =
      cells.find(({ id, cell }) => id === last.current && cell.type !== 'note') ??
      cells.findLast(({ cell }) => cell.type !== 'note');
    if (!target) return;
    const { id, cell } = target;
    setCell(id, { ...cell, text: `${cell.text}${/[\w)]$/.test(cell.text) ? ' ' : ''}${text}` });
    goTo.value = id;
  };

  return (
    <section class="scratch" aria-label="scratch cells">
      <div class="scratch-sheet">
        {scratchSays.value && (
          <p class="notice" role="alert">
            {scratchSays.value}
          </p>
        )}
        {work.missing.value && (
          <p class="notice" role="alert">
            What works the cells out could not be fetched. Your text stays here: press Enter in a cell when
            there is a network, or reload the page.
          </p>
        )}
        <ol
          class="cells"
          onFocusCapture={({ target }) => {
            const id = /^scratch-(\d+)$/.exec((target as HTMLElement).id)?.[1];
            if (id) last.current = Number(id);
          }}
        >
          {cells.map((kept, at) => (
            <CellRow
              key={kept.id}
              kept={kept}
              place={at + 1}
              of={cells.length}
              result={work.results.value.get(kept.id)}
              system={system}
              work={work}
              example={kept.cell.type === 'plot' ? plotExample : at === 0 ? examples[system] : undefined}
              enter={() => {
                work.use();
                // A plot has more to fill in.
                if (kept.cell.type === 'sum') goOn(at);
              }}
              leave={() => {
                goTo.value = (cells[at + 1] ?? cells[at - 1])?.id;
              }}
            />
          ))}
        </ol>
        <p class="buttons">
          {(['sum', 'note', 'plot'] as const).map((type) => (
            <button
              key={type}
              type="button"
              class={type === 'sum' ? undefined : 'quiet'}
              onClick={() => add(type)}
            >
              {adds[type]}
            </button>
          ))}
        </p>
        <p role="status" class="taken-out">
          {takenOut.value && (
            <>
              One is taken out.{' '}
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  const back = takenOut.peek()?.kept.id;
                  putBack();
                  goTo.value = back;
                }}
              >
                put it back
              </button>
            </>
          )}
        </p>
        <KeepCells />
      </div>
      <Names work={work} system={system} put={put} />
    </section>
  );
}
