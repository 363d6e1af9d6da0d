/** The lab on a batch of finish: for the outside of the box, shared by parts. */
import type { InputsOf } from '../../../box/core/field.ts';
import { count, fine } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import type { Values } from '../../../box/whole/index.ts';
import { BRUSHED_WET, blendPart } from '../../../calc/finish/coats.ts';
import { finishVolume, wetFilm } from '../../../calc/glue/glue.ts';
import { BatchGlass, type Layer } from '../../../figures/finish/BatchGlass.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';

const ofBatch = {
  coats: count('coats', { low: 1, high: 6, start: 3 }),
  partsFirst: count('parts of the first liquid', { low: 1, high: 10, start: 2 }),
  partsSecond: count('parts of the second', { low: 0, high: 10, start: 1 }),
  partsThird: count('parts of a third', { low: 0, high: 10, start: 0 }),
  wet: fine('one wet coat', { low: wetFilm.low, high: 0.15, start: BRUSHED_WET }),
};
type Batch = Values & InputsOf<typeof ofBatch>;
const inBatch = rowsOf<Batch>();
const ofVolume = { kind: 'volume', digits: 1, rule: 'blend-by-parts' } as const;
const batchRow = inBatch(finishVolume, (v) => ({ A: v.outsideArea, w: v.wet, n: v.coats }), {
  ...ofVolume,
  label: 'finish for the outside',
});
const liquids = (
  [
    ['first', (v: Batch) => v.partsFirst],
    ['second', (v: Batch) => v.partsSecond],
    ['third', (v: Batch) => v.partsThird],
  ] as const
).map(([name, parts]) => ({
  name,
  parts,
  row: inBatch(
    blendPart,
    (v) => ({
      V: batchRow.work(v).value,
      a: parts(v),
      P: v.partsFirst + v.partsSecond + v.partsThird,
    }),
    { ...ofVolume, label: `the ${name} liquid of it`, when: (v) => parts(v) > 0 },
  ),
}));

interface Found {
  /** mm³ */
  readonly batch: number;
  readonly layers: readonly Layer[];
}

export const batchLab = lab({
  title: 'A batch for the outside of this box',
  own: ofBatch,
  controls: ['coats', 'partsFirst', 'partsSecond'],
  more: ['partsThird', 'wet'],
  solve: (v): Found => ({
    batch: batchRow.work(v).value,
    layers: liquids
      .map(({ name, parts, row }) => ({ name, parts: parts(v), volume: row.work(v).value }))
      .filter(({ parts }) => parts > 0),
  }),
  figure: ({ values }) => <BatchGlass values={values} />,
  says: (v) => (
    <>
      <Quantity value={v.batch} kind="volume" digits={1} /> for{' '}
      <Quantity value={v.outsideArea} kind="area" digits={0} />:{' '}
      {v.layers.map(({ name, volume }, at) => (
        <span key={name}>
          {at > 0 && ', '}
          <Quantity value={volume} kind="volume" digits={1} /> of the {name}
        </span>
      ))}
      .
    </>
  ),
  results: ['outsideArea', batchRow, ...liquids.map(({ row }) => row)],
});
