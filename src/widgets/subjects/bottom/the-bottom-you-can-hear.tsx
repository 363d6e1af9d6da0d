/** Labs of the lesson on what the bottom sounds like. */
import { bottom } from '../../../box/subjects/bottom/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { TapRing } from '../../../figures/bottom/TapRing.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { notesLab } from './notes.tsx';
import { tappedLab } from './tapped.tsx';
import { theBottomYouCanHearGuesses } from './the-bottom-you-can-hear-guesses.tsx';

const labs: Record<string, LabSpec> = {
  'tap-the-bottom': {
    title: 'A tap on the bottom',
    figure: TapRing,
    controls: ['bottomThickness'],
    more: ['bottom', 'sizeFrom', 'wantedLength', 'wantedWidth'],
    results: ['tapMotion', 'tapPitch', 'bottomSag'],
    says: (v) => (
      <>
        Against a thin bottom this one moves <Quantity value={v.tapMotion} kind="percent" digits={0} /> as
        far, sounds <Quantity value={v.tapPitch} kind="ratio" digits={1} /> times as high, and rings{' '}
        <Quantity value={100 / v.tapPitch} kind="percent" digits={0} /> as long.
      </>
    ),
  },
  notes: notesLab,
  tapped: tappedLab,
};

export const lesson = { labs, guesses: theBottomYouCanHearGuesses, model: modelOf(bottom) };
export default islandOf(lesson);
