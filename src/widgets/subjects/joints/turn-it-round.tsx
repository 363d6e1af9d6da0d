/** Lab of the lesson on cutting fingers. */
import { joints } from '../../../box/subjects/joints/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { placeErrors, TurnedWall } from '../../../figures/joints/TurnedWall.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { turnItRoundGuesses } from './turn-it-round-guesses.tsx';

const labs: Record<string, LabSpec> = {
  'turned-wall': {
    title: 'One wall, cut from one edge and from both',
    figure: TurnedWall,
    controls: ['stepError', 'fingerWidth'],
    more: ['wantedHeight'],
    results: ['fingerCount', 'jigSteps', 'addedStepError'],
    says: (v) => {
      const [one, both] = (['one', 'both'] as const).map((from) => Math.max(...placeErrors(v, from)));
      const odd = placeErrors(v, 'one').length % 2 === 1;
      return odd ? (
        <>
          From one edge the worst finger is <Quantity value={one!} kind="length" as="fine" /> out of place,
          from both <Quantity value={both!} kind="length" as="fine" />, and it lies in the middle.
        </>
      ) : (
        'An even number: one edge begins with a finger, the other with a slot. Turned around, the wall would be cut the wrong way.'
      );
    },
  },
};

export const lesson = { labs, guesses: turnItRoundGuesses, model: modelOf(joints) };
export default islandOf(lesson);
