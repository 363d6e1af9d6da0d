/** Labs of the lesson on where a groove shows. */
import { grooves } from '../../../box/subjects/grooves/subject.ts';
import { joints } from '../../../box/subjects/joints/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { cornerHoles } from '../../../calc/grooves/groove-corner.ts';
import { CornerXray } from '../../../figures/grooves/CornerXray.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { grooveShowsGuesses } from './where-the-groove-shows-guesses.tsx';

const labs: Record<string, LabSpec> = {
  corner: {
    title: 'Where the groove meets the fingers',
    figure: CornerXray,
    controls: ['bottomLip', 'fingerWidth'],
    more: ['bottomTongue', 'grooveDepth', 'wall'],
    results: ['fingerAboveGroove', 'grooveStop', 'grooveWidth'],
    says: (v) => {
      const holes = cornerHoles(v.bottomLip, v.bottomTongue, v.fingerWidth);
      if (v.grooveStop <= 0) return 'The groove goes through the wall: nothing is left to stop it in.';
      return holes.length > 1 ? (
        'The groove runs from one finger into the next: holes show on all four faces, and every wall needs a stop.'
      ) : (
        <>
          The groove stays inside one finger: stop it <Quantity value={v.grooveStop} kind="length" /> from the
          ends of the walls with a {holes[0]?.pair === 'first' ? 'finger' : 'socket'} at the lower edge, and
          no hole shows.
        </>
      );
    },
  },
};

export const lesson = { labs, guesses: grooveShowsGuesses, model: modelOf(grooves, joints) };
export default islandOf(lesson);
