/** Lab of the lesson on corner joints. */
import { joints } from '../../../box/subjects/joints/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { cornersOf, WhatMeets } from '../../../figures/joints/WhatMeets.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { whichCornerJointGuesses } from './which-corner-joint-guesses.tsx';

const labs: Record<string, LabSpec> = {
  'what-meets': {
    title: 'What meets what at a corner',
    figure: WhatMeets,
    controls: ['joint', 'wall'],
    more: ['fingerWidth', 'tailCount', 'dovetailSlope', 'keyCount', 'wantedHeight'],
    results: ['longGrainArea', 'keyGlueArea', 'miterArea'],
    says: (v) => {
      const mine = cornersOf(v).find(({ joint }) => joint === v.joint);
      if (!mine)
        return 'A spline lies across the miter. Its grooves cut the fibers of both walls at 45°, so none of its area is long grain on long grain.';
      return mine.long > 0 ? (
        <>
          Here <Quantity value={mine.long} kind="area" /> of long grain lies on long grain. The rest has cut
          fibers on one side or both.
        </>
      ) : (
        <>
          All of this corner’s <Quantity value={mine.cut} kind="area" /> has cut fibers in it: end grain, or
          fibers cut at 45°.
        </>
      );
    },
  },
};

export const lesson = { labs, guesses: whichCornerJointGuesses, model: modelOf(joints) };
export default islandOf(lesson);
