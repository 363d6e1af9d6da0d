/** Labs on squareness: the diagonals of a box, and the test of a fence by five cuts. */
import type { InputsOf } from '../../../box/core/field.ts';
import { fine, length } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { square } from '../../../box/subjects/square/subject.ts';
import type { Refused } from '../../../calc/core/refusal.ts';
import { fenceError, fenceMove, fenceUncertainty } from '../../../calc/square/five-cuts.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { FiveCuts } from '../../../figures/square/FiveCuts.tsx';
import { RackedBox } from '../../../figures/square/RackedBox.tsx';
import { INCH } from '../../../units/index.ts';
import { type LabSpec, lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { isItSquareGuesses } from './is-it-square-guesses.tsx';

const Angle = ({ of }: { of: number }) => <Quantity value={of} kind="angle" digits={2} />;
/** A fence is known to a thousandth of a degree. */
const Exact = ({ of }: { of: number }) => <Quantity value={of} kind="angle" digits={3} />;
const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

const diagonals: LabSpec = {
  title: 'The diagonals of a box',
  figure: RackedBox,
  controls: ['diagonalsApart'],
  more: ['angleError', 'sizeFrom', 'wantedLength', 'wantedWidth', 'wall'],
  results: ['angleOffSquare', 'endShift', 'diagonalsRacked'],
  says: (v) =>
    v.diagonalsApart > 0 ? (
      <>
        Diagonals <Quantity value={v.diagonalsApart} kind="length" as="fine" /> apart mean that the corners
        are <Angle of={v.angleOffSquare} /> off square, and one end stands{' '}
        <Quantity value={v.endShift} kind="length" as="fine" /> aside of where it should. Squeeze the longer
        one until <Quantity value={v.diagonalsApart / 2} kind="length" as="fine" /> of it is gone.
      </>
    ) : (
      'Equal diagonals: square, if opposite walls are of one length.'
    ),
};

/** Widths as calipers read them. */
const strip = { low: 5, high: 30, step: 0.01, inchStep: INCH / 1000 } as const;
const own = {
  stripFirst: fine('width of the strip where it was cut first', { ...strip, start: 12.43 }),
  stripOther: fine('width at its other end', { ...strip, start: 12.15 }),
  stripLength: length('length between the two', { low: 150, high: 1200, start: 406 }),
  pivot: length('from the fence’s pivot to where you move it', { low: 150, high: 1200, start: 500 }),
  widthError: fine('error of a measured width', { low: 0, high: 0.2, start: 0.02 }),
};
type V = InputsOf<typeof own>;
/** Degrees, degrees, mm. */
interface Found {
  readonly fenceError: number;
  readonly sure: number;
  readonly moveBy: number;
}

const row = rowsOf<V>();
const widths = (v: V) => ({ A: v.stripFirst, B: v.stripOther, L: v.stripLength });
const line = { rule: 'check-blade-and-fence' } as const;
const error = row(fenceError, widths, { ...line, label: 'error of the fence', kind: 'angle', digits: 3 });
const unsure = row(fenceUncertainty, (v) => ({ m: v.widthError, L: v.stripLength }), {
  ...line,
  label: 'give or take',
  kind: 'angle',
  digits: 3,
});
const move = row(fenceMove, (v) => ({ ...widths(v), P: v.pivot }), {
  ...line,
  label: 'move the fence there by',
  kind: 'length',
  as: 'fine',
});

const fiveCuts = lab({
  title: 'Is the fence square to the blade?',
  own,
  controls: ['stripFirst', 'stripOther', 'stripLength'],
  more: ['pivot', 'widthError'],
  solve: (v): Found | Refused => {
    const found = error.work(v);
    return found.outside
      ? { refused: 'These two widths differ by more than a fence can be off: measure again.' }
      : { fenceError: found.value, sure: unsure.work(v).value, moveBy: move.work(v).value };
  },
  figure: ({ values }) => <FiveCuts values={values} />,
  says: ({ fenceError: off, sure, moveBy, pivot }) =>
    Math.abs(off) <= sure ? (
      <>
        As square as your calipers can tell: <Exact of={Math.abs(off)} /> off, give or take{' '}
        <Exact of={sure} />.
      </>
    ) : (
      <>
        The fence is <Exact of={Math.abs(off)} /> off, give or take <Exact of={sure} />. Move it by{' '}
        <Fine of={Math.abs(moveBy)} /> at <Quantity value={pivot} kind="length" digits={0} denominator={8} />{' '}
        from its pivot, so that the strip gets {off > 0 ? 'narrower' : 'wider'} where it is cut first, and
        test again.
      </>
    ),
  results: [error, unsure, move],
});

export const lesson = {
  labs: { diagonals, 'five-cuts': fiveCuts },
  guesses: isItSquareGuesses,
  model: modelOf(square),
};
export default islandOf(lesson);
