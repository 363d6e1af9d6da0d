/** Labs of the lesson on sliding lids. */
import { lid } from '../../../box/subjects/lid/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import { LidWay } from '../../../figures/lid/LidWay.tsx';
import { NotchSection } from '../../../figures/lid/NotchSection.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { lidThatRunsGuesses } from './a-lid-that-runs-guesses.tsx';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" />;

const labs: Record<string, LabSpec> = {
  way: {
    title: 'Out of the lid’s way',
    figure: LidWay,
    controls: ['lidLip', 'lidThickness'],
    more: ['lidGrooveDepth', 'wall', 'sizeFrom', 'contentsLength', 'wantedLength'],
    results: ['frontLowered', 'lidLength', 'lidHeldHalfOpen'],
    says: (v) => (
      <>
        The front ends <Quantity value={v.frontLowered} kind="length" as="size" /> below the sides: the wood
        above the groove and the groove itself. The lid is <Length of={v.lidLength} /> long, since it covers
        the front wall and reaches into the groove of the back.
      </>
    ),
  },
  notch: {
    title: 'What the lid’s thickness leaves for a thumb',
    figure: NotchSection,
    controls: ['lidThickness'],
    results: ['lidTongue', 'notchDepth'],
    says: (v) =>
      v.notchDepth >= 3 ? (
        <>
          A notch <Length of={v.notchDepth} /> deep gives the thumb a wall to push on.
        </>
      ) : v.notchDepth >= 1 ? (
        <>
          Only <Length of={v.notchDepth} /> can be taken out, too little for most thumbs. Glue on a strip, or
          take a thicker lid.
        </>
      ) : (
        'The lid is too thin for a notch: glue on a strip.'
      ),
  },
};

export const lesson = { labs, guesses: lidThatRunsGuesses, model: modelOf(movement, lid) };
export default islandOf(lesson);
