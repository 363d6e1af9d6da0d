/** One cell: its field, what follows from it, and the buttons that move it or take it out. */
import { useId } from 'preact/hooks';
import { type Cell, longestNote } from '../../notebook/scratch/cells.ts';
import { type KeptCell, keepDraft, moveCell, setCell, takeOut } from '../../notebook/scratch/kept.ts';
import type { CellResult } from '../../notebook/scratch/sheet.ts';
import type { UnitSystem } from '../../units/index.ts';
import { href } from '../kit/href.ts';
import { PlotEnds, PlotResult } from './PlotCell.tsx';
import { SumField } from './SumField.tsx';
import { Result, signatureOf } from './said.tsx';
import type { AtWork } from './use-scratch.ts';

interface Props {
  kept: KeptCell;
  /** Its place from 1, and how many there are. */
  place: number;
  of: number;
  result: CellResult | undefined;
  system: UnitSystem;
  work: AtWork;
  example?: string;
  enter: () => void;
  /** Where the reader goes on when this is taken out. */
  leave: () => void;
}

const called: Readonly<Record<Cell['type'], string>> = { sum: 'cell', note: 'note', plot: 'plot' };
export const fieldId = (id: number) => `scratch-${id}`;

export function CellRow({
  kept: { id, cell },
  place,
  of,
  result,
  system,
  work,
  example,
  enter,
  leave,
}: Props) {
  const says = useId();
  const name = `${called[cell.type]} ${place}`;
  const write = (text: string) => setCell(id, { ...cell, text });
  return (
    <li class={`cell of-${cell.type}`}>
      <fieldset>
        <legend>
          {name}
          {cell.type === 'sum' && cell.from && (
            <>
              , of <a href={href(`lessons/${cell.from}/`)}>a lesson</a>
            </>
          )}
        </legend>
        <div class="cell-buttons">
          {place > 1 && (
            <button
              type="button"
              class="quiet"
              aria-label={`move ${name} up`}
              onClick={() => moveCell(id, -1)}
            >
              up
            </button>
          )}
          {place < of && (
            <button
              type="button"
              class="quiet"
              aria-label={`move ${name} down`}
              onClick={() => moveCell(id, 1)}
            >
              down
            </button>
          )}
          <button
            type="button"
            class="quiet"
            aria-label={`take out ${name}`}
            onClick={() => {
              leave();
              takeOut(id);
            }}
          >
            take out
          </button>
        </div>
        {cell.type === 'note' ? (
          <textarea
            id={fieldId(id)}
            aria-label={name}
            rows={Math.min(8, Math.max(2, Math.ceil(cell.text.length / 45)))}
            maxLength={longestNote}
            value={cell.text}
            onInput={({ currentTarget }) => write(currentTarget.value)}
          />
        ) : (
          <SumField
            id={fieldId(id)}
            label={name}
            describedBy={says}
            value={cell.text}
            wrong={result?.type === 'trouble'}
            offers={work.offers.value}
            placeholder={example}
            set={write}
            draft={(text) => keepDraft(id, text)}
            use={work.use}
            enter={enter}
            hint={(asked) =>
              signatureOf(work.names.value.find((one) => one.name.toLowerCase() === asked.toLowerCase()))
            }
          />
        )}
        {cell.type === 'plot' && <PlotEnds cell={cell} set={(next) => setCell(id, next)} use={work.use} />}
        {cell.type !== 'note' && (
          <p id={says} role="status" class="cell-result">
            <Result result={result} system={system} />
          </p>
        )}
        {cell.type === 'plot' && <PlotResult cell={cell} result={result} system={system} />}
      </fieldset>
    </li>
  );
}
