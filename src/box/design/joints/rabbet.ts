/** Rabbet joint: each side is rabbeted to half its thickness, the whole height, and the end stands in the rabbet. */
import { slot } from '../../../geometry/solid.ts';
import { type Joint, noise, plain } from './joint.ts';

export const rabbet: Joint = {
  inset: (wall) => wall / 2,
  layout: () => plain,
  sideCuts: ({ height }, { wall }) => [slot({ x: [0, wall], y: [wall / 2, wall], z: [0, height] })],
  endCuts: () => [],
  // The half that is left of the side shows; a groove reaches it only when deeper than half the wall.
  shows: (owner, _corner, { wall }, _low, _high, depth) => owner === 'side' && depth > wall / 2 + noise,
};
