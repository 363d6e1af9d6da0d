/** A cell that plots an expression over one name: what changes, from where, to where, and a point that is read. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { OwnPlot, readOff } from '../../figures/scratch/OwnPlot.tsx';
import { type Cell, longestEnd, longestOver } from '../../notebook/scratch/cells.ts';
import type { Plotted } from '../../notebook/scratch/plot.ts';
import type { CellResult } from '../../notebook/scratch/sheet.ts';
import type { UnitSystem } from '../../units/index.ts';
import { TextInput } from '../kit/TextInput.tsx';

type PlotCellOf = Cell & { type: 'plot' };

/** The three short fields of a plot. */
export function PlotEnds({
  cell,
  set,
  use,
}: {
  cell: PlotCellOf;
  set: (cell: PlotCellOf) => void;
  use: () => void;
}) {
  const id = useId();
  const ends = [
    ['over', 'over', longestOver, 'width'],
    ['from', 'from', longestEnd, '2 in'],
    ['to', 'to', longestEnd, '12 in'],
  ] as const;
  return (
    <div class="plot-ends">
      {ends.map(([name, label, longest, placeholder]) => (
        <p key={name}>
          <label for={id + name}>{label}</label>
          <TextInput
            id={id + name}
            value={cell[name]}
            maxLength={longest}
            placeholder={placeholder}
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            onFocus={use}
            set={(text) => set({ ...cell, [name]: text })}
          />
        </p>
      ))}
    </div>
  );
}

/** The picture, and a slider that reads it. */
export function PlotResult({
  cell,
  result,
  system,
}: {
  cell: PlotCellOf;
  result: CellResult | undefined;
  system: UnitSystem;
}) {
  const id = useId();
  const share = useSignal(0.5);
  if (result?.type !== 'plot') return null;
  const { plot } = result;
  const points = plot.pieces.flat();
  const at = points[Math.round(share.value * (points.length - 1))];
  const read = at && readingOf(plot, at, cell, system);
  return (
    <div class="picture">
      <OwnPlot {...plot} system={system} over={cell.over} text={cell.text} at={at} />
      <p class="read-off">
        <label for={id}>read at</label>
        <input
          id={id}
          type="range"
          min={0}
          max={points.length - 1}
          value={Math.round(share.value * (points.length - 1))}
          aria-valuetext={read}
          onInput={({ currentTarget }) => {
            share.value = Number(currentTarget.value) / Math.max(1, points.length - 1);
          }}
        />
        <output for={id}>{read}</output>
      </p>
      {plot.gap && <p class="help">Where there is no line: {plot.gap}</p>}
    </div>
  );
}

const readingOf = (
  { x, y }: Plotted,
  [at, value]: readonly [number, number],
  { over }: PlotCellOf,
  system: UnitSystem,
) => `${over} = ${readOff(at, x[system])}: ${readOff(value, y[system])}`;
