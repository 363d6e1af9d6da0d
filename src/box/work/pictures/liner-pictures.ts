/** The liner of a lift-off lid. */
import type { Vector } from '../../../geometry/convex.ts';
import type { Planned } from '../step.ts';
import { partOf, partsOf, type Scene, thingsOf } from './scene.ts';
import { frameOf } from './walls.ts';

export function linerStrip(design: Planned): Scene {
  const apart = 3 * design.plan.wall;
  const way: Readonly<Record<string, Vector>> = {
    'liner-front': [-apart, 0, 0],
    'liner-back': [apart, 0, 0],
    'liner-left': [0, -apart, 0],
    'liner-right': [0, apart, 0],
  };
  return {
    shows: 'The four pieces of the liner, their miters marked.',
    things: partsOf(design, 'liner-').flatMap((part) =>
      thingsOf(design, part, { at: way[part.name], without: ['lap'], marked: { cuts: ['joint'] } }),
    ),
  };
}

export const liner = (design: Planned): Scene => ({
  shows: 'The liner on its way into the box, the part that the lid slips over marked.',
  things: [
    ...frameOf(design, 'box', {}),
    ...thingsOf(design, partOf(design, 'bottom')),
    ...partsOf(design, 'liner-').flatMap((part) =>
      thingsOf(design, part, { at: [0, 0, 0.6 * design.plan.height], marked: { cuts: ['lap'] } }),
    ),
  ],
});
