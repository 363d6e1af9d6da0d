/** Butt joint: the ends stand between the sides. */
import { type Joint, plain } from './joint.ts';

export const butt: Joint = {
  inset: (wall) => wall,
  layout: ({ height }) => ({ ...plain, segments: [{ from: 0, to: height, owner: 'side' }] }),
  sideCuts: () => [],
  endCuts: () => [],
  // The side's end grain shows on the face of the box; the end's is covered by the side.
  shows: (owner) => owner === 'side',
};
