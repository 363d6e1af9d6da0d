/** Labs of the lesson on joint spacing. */

import { joints } from '../../../box/subjects/joints/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { pieces, wholeHeights } from '../../../calc/joints/finger-layout.ts';
import { bindingStep } from '../../../calc/joints/joint-fit.ts';
import { FingerLayout } from '../../../figures/joints/FingerLayout.tsx';
import { GlueArea } from '../../../figures/joints/GlueArea.tsx';
import { StepError } from '../../../figures/joints/StepError.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { jointSpacingGuesses } from './joint-spacing-guesses.tsx';

const labs: Record<string, LabSpec> = {
  'finger-layout': {
    title: 'Fingers of one corner',
    figure: FingerLayout,
    controls: ['fingerWidth', 'headroom'],
    more: ['wall', 'contentsHeight', 'sizeFrom', 'wantedHeight'],
    results: ['fingerCount', 'edgeSliver', 'oddCount', 'oddHeight', 'oddFingerWidth'],
    says: (v) => {
      const count = pieces(v.outsideHeight, v.fingerWidth);
      const { below, above } = wholeHeights(v.outsideHeight, v.fingerWidth, true);
      if (v.edgeSliver > 0)
        return (
          <>
            <Quantity value={v.edgeSliver} kind="length" /> is left at the far edge.{' '}
            {below >= 3 * v.fingerWidth && (
              <>
                Trim the walls to <Quantity value={below} kind="length" />, or make them
              </>
            )}
            {below < 3 * v.fingerWidth && 'Make the walls'} <Quantity value={above} kind="length" /> high, and
            an odd number of whole fingers fits.
          </>
        );
      return count % 2 === 0 ? (
        <>
          {count} whole fingers: nothing is left over, but one wall has a finger at the bottom and a slot at
          the top.
        </>
      ) : (
        <>
          {count} whole fingers, an odd number: both edges of a wall look alike, and it can be turned end for
          end.
        </>
      );
    },
  },
  'step-error': {
    title: 'An error that adds up, and one that does not',
    figure: StepError,
    controls: ['stepError', 'fingerFit', 'fingerWidth'],
    more: ['headroom', 'contentsHeight', 'species'],
    results: ['jigSteps', 'addedStepError', 'fingerSwelling'],
    says: (v) => {
      const binds = bindingStep(v.jigSteps, v.stepError, v.fingerFit);
      const total = <Quantity value={v.addedStepError} kind="length" as="fine" />;
      return binds === undefined ? (
        <>
          Even cut on two settings these walls close: after {v.jigSteps} steps the fingers miss by {total}, no
          more than the play.
        </>
      ) : (
        <>
          Cut on two settings, these walls bind at finger {2 * binds} of{' '}
          {pieces(v.outsideHeight, v.fingerWidth)}. Cut on one setting they close, and the last finger is{' '}
          {total} out of place.
        </>
      );
    },
  },
  'glue-area': {
    title: 'What meets what at a corner',
    figure: GlueArea,
    controls: ['fingerWidth', 'wall'],
    more: ['headroom', 'contentsHeight', 'joint'],
    results: ['longGrainArea', 'miterArea'],
    says: (v) => (
      <>
        The plain miter has <Quantity value={v.miterArea} kind="area" /> of end grain; your corner has{' '}
        <Quantity value={v.longGrainArea} kind="area" /> of long grain on long grain.
      </>
    ),
  },
};

export const lesson = { labs, guesses: jointSpacingGuesses, model: modelOf(joints) };
export default islandOf(lesson);
