/** One tap on four bottoms: the notes in it drawn, said and, if the reader wants, played. */
import type { InputsOf } from '../../../box/core/field.ts';
import { choice, number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import type { Values } from '../../../box/whole/index.ts';
import { firstTapFrequency } from '../../../calc/bottom/bottom.ts';
import { type PanelCut, type PanelWoodName, panelOf } from '../../../calc/bottom/panel-woods.ts';
import { firstSpeed, knuckleReach, lossOfWood, ringTime } from '../../../calc/bottom/tap.ts';
import { tapNotes } from '../../../calc/bottom/tap-notes.ts';
import { TapSpectra } from '../../../figures/bottom/TapSpectra.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { once } from '../../lesson/once.ts';
import { panelChoices, tooSmall } from './panel-choices.ts';
import { TapPlayer } from './TapPlayer.tsx';

/** Thicknesses that are tapped, mm: about 1/8, 3/16, 1/4 and 5/16 in. */
const tappedThick = [3, 4.5, 6, 8] as const;
const [thin, , usual] = tappedThick;

const own = {
  contact: number('the knuckle stays on the wood (milliseconds)', 'number', {
    low: 0.5,
    high: 3,
    step: 0.5,
    digits: 1,
    start: 2,
    help: 'From 1 to 3 by estimate. A fingernail stays for less.',
  }),
  ...panelChoices,
  loss: choice(
    'loss in the wood',
    { across: '0.02, as across the grain', along: '0.01, as along it' },
    'across',
  ),
};
type V = Values & InputsOf<typeof own>;

const panel = (v: V, h: number) =>
  panelOf(v.wood as PanelWoodName, v.cut as PanelCut, { a: v.insideLength, b: v.insideWidth, h });
const lowest = (v: V, h: number) => firstTapFrequency.compute(panel(v, h));
const lossOf = (v: V) => (v.loss === 'along' ? lossOfWood / 2 : lossOfWood);
const against = (v: V, h: number) => ({ h, h_0: thin, f_0: lowest(v, thin), T: v.contact });

const solve = once(
  (v: V) => [v.insideLength, v.insideWidth, v.wood, v.cut, v.contact, v.loss],
  (v: V) =>
    tooSmall(v) ?? {
      bottoms: tappedThick.map((h) => ({
        h,
        notes: tapNotes(panel(v, h), v.contact, lossOf(v)),
        speed: firstSpeed.compute(against(v, h)),
      })),
    },
);

const row = rowsOf<V>();
const line = { rule: 'thicker-bottom-sounds-quieter' } as const;

export const tappedLab = lab({
  title: 'One tap on four bottoms',
  own,
  controls: ['contact', 'cut'],
  more: ['wood', 'loss', 'sizeFrom', 'wantedLength', 'wantedWidth'],
  solve,
  figure: ({ values: { bottoms, contact } }) => (
    <>
      <TapSpectra bottoms={bottoms} contact={contact} />
      <TapPlayer bottoms={bottoms} contact={contact} />
    </>
  ),
  says: ({ bottoms, contact }) => {
    const [first, , third] = bottoms;
    return (
      <>
        A knuckle that stays {contact} ms starts{' '}
        <Quantity
          value={knuckleReach.compute({ f: first!.notes[0]!.f, T: contact })}
          kind="percent"
          digits={0}
        />{' '}
        of the lowest note at <Quantity value={thin} kind="length" denominator={16} />, and{' '}
        <Quantity
          value={knuckleReach.compute({ f: third!.notes[0]!.f, T: contact })}
          kind="percent"
          digits={0}
        />{' '}
        at <Quantity value={usual} kind="length" denominator={16} />, where the wood moves{' '}
        <Quantity value={third!.speed} kind="percent" digits={0} /> as fast.
      </>
    );
  },
  results: [
    row(firstSpeed, (v) => against(v, usual), {
      ...line,
      label: 'speed in the lowest note at 6 mm (1/4 in), against 3 mm (1/8 in)',
      kind: 'percent',
      digits: 0,
    }),
    row(knuckleReach, (v) => ({ f: lowest(v, usual), T: v.contact }), {
      ...line,
      label: 'what the knuckle starts of it',
      kind: 'percent',
      digits: 0,
    }),
    row(ringTime, (v) => ({ f: lowest(v, usual), eta: lossOf(v) }), {
      ...line,
      label: 'ring at 6 mm (1/4 in), seconds',
      kind: 'number',
      digits: 2,
    }),
  ],
});
