/** The lowest dozen notes of a bottom, and how it swings in the first six. */
import type { InputsOf } from '../../../box/core/field.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { thinBottom } from '../../../box/subjects/bottom/results.ts';
import type { Values } from '../../../box/whole/index.ts';
import { firstTapFrequency } from '../../../calc/bottom/bottom.ts';
import { lowestNoteHeld, lowestNotes, noteOfPanel } from '../../../calc/bottom/modes.ts';
import { type PanelCut, type PanelWoodName, panelOf } from '../../../calc/bottom/panel-woods.ts';
import { NoteShapes } from '../../../figures/bottom/NoteShapes.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { once } from '../../lesson/once.ts';
import { panelChoices, tooSmall } from './panel-choices.ts';

type V = Values & InputsOf<typeof panelChoices>;

const panel = (v: V, h = v.bottomThickness) =>
  panelOf(v.wood as PanelWoodName, v.cut as PanelCut, { a: v.insideLength, b: v.insideWidth, h });

const solve = once(
  (v: V) => [v.insideLength, v.insideWidth, v.bottomThickness, v.wood, v.cut],
  (v: V) => tooSmall(v) ?? { notes: lowestNotes(panel(v)), thinNotes: lowestNotes(panel(v, thinBottom)) },
);

const row = rowsOf<V>();
const line = { kind: 'number', digits: 0, rule: 'thicker-bottom-sounds-quieter' } as const;
const Hertz = ({ of }: { of: number }) => <Quantity value={of} kind="number" digits={0} />;

export const notesLab = lab({
  title: 'A dozen notes',
  own: panelChoices,
  controls: ['bottomThickness', 'cut'],
  more: ['wood', 'sizeFrom', 'wantedLength', 'wantedWidth'],
  solve,
  figure: ({ values: v }) => (
    <NoteShapes
      length={v.insideLength}
      width={v.insideWidth}
      thickness={v.bottomThickness}
      thin={thinBottom}
      notes={v.notes}
      thinNotes={v.thinNotes}
    />
  ),
  says: ({ notes: [first, second, ...rest] }) => (
    <>
      The lowest is <Hertz of={first!.f} /> Hz (swings a second); the second is{' '}
      <Quantity value={second!.f / first!.f} kind="number" digits={1} /> times as high, the twelfth{' '}
      <Quantity value={rest.at(-1)!.f / first!.f} kind="number" digits={1} /> times.
    </>
  ),
  results: [
    row(firstTapFrequency, (v) => panel(v), { ...line, label: 'lowest note, edges free to turn, Hz' }),
    row(lowestNoteHeld, (v) => panel(v), { ...line, label: 'lowest note, edges held fast, Hz' }),
    row(
      noteOfPanel,
      (v) => {
        const { m, n } = lowestNotes(panel(v), 2)[1]!;
        return { ...panel(v), m, n };
      },
      { ...line, label: 'second note, edges free to turn, Hz' },
    ),
  ],
});
