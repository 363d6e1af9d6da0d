/** Labs of the lesson on lift-off and hinged lids. */
import type { InputsOf } from '../../../box/core/field.ts';
import { fine, length } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { lid } from '../../../box/subjects/lid/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { hingeGap } from '../../../calc/lid/hinge.ts';
import { HingePlaces } from '../../../figures/lid/HingePlaces.tsx';
import { HingeSide, opensBy } from '../../../figures/lid/HingeSide.tsx';
import { SawnLid } from '../../../figures/lid/SawnLid.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { type LabSpec, lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { otherLidGuesses } from './lift-off-and-hinged-lids-guesses.tsx';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" />;
const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

const own = {
  leafDepth: fine('depth of each leaf', { low: 1, high: 4, start: 2.4 }),
  knuckle: length('thickness of the knuckle', { low: 3, high: 8, start: 5 }),
};
type V = InputsOf<typeof own>;
const tooDeep = (v: V) => 2 * v.leafDepth - v.knuckle;
const gapRow = rowsOf<V>()(hingeGap, (v) => ({ k: v.knuckle, d_b: v.leafDepth, d_l: v.leafDepth }), {
  label: 'gap along the back; below zero bound',
  kind: 'length',
  as: 'fine',
  rule: 'hinges',
});

const labs: Record<string, LabSpec> = {
  saw: {
    title: 'What the saw takes',
    figure: SawnLid,
    controls: ['lidHeight', 'kerf'],
    more: ['wantedHeight', 'wall'],
    results: ['jointedHeight', 'outsideHeight', 'lidShare'],
    says: (v) => (
      <>
        To end <Quantity value={v.outsideHeight} kind="length" as="size" /> high it is glued up{' '}
        <Quantity value={v.jointedHeight} kind="length" as="size" /> high: the saw takes{' '}
        <Length of={v.kerf} />.
      </>
    ),
  },
  depth: lab({
    title: 'A little too deep, a little too shallow',
    own,
    controls: ['leafDepth', 'knuckle'],
    figure: ({ values }) => <HingeSide values={values} knuckle={values.knuckle} tooDeep={tooDeep(values)} />,
    results: [gapRow],
    says: (v) =>
      tooDeep(v) > 1e-6 ? (
        <>
          Too deep by <Fine of={tooDeep(v)} />: the front stands open by{' '}
          <Length of={opensBy(v, tooDeep(v), v.knuckle)} />.
        </>
      ) : (
        <>
          The lid shuts, and <Fine of={Math.max(0, -tooDeep(v))} /> of gap stay along the back.
        </>
      ),
  }),
  places: {
    title: 'One length from either end',
    figure: HingePlaces,
    controls: ['hingeLength'],
    more: ['wantedLength', 'lidHeight'],
    results: ['outsideLength'],
    says: (v) =>
      4 * v.hingeLength <= Math.max(v.outsideLength, v.outsideWidth) + 1e-6 ? (
        <>
          Each hinge lies <Length of={v.hingeLength} /> from its end, and its screws stay clear of the corner
          joint.
        </>
      ) : (
        'Two such hinges do not fit one length from either end: take shorter ones.'
      ),
  },
};

export const lesson = { labs, guesses: otherLidGuesses, model: modelOf(lid) };
export default islandOf(lesson);
