/** How bright a face is: lamp above the reader's left shoulder, so that it stays where it is while a box turns. */
import { dot, type Vector } from '../../geometry/convex.ts';
import type { View } from '../../geometry/view.ts';

/**
 * Share of white (above 0) or black (below 0) in a face's own color, whole percent. In the view that is equal along all
 * axes: the top +22, faces to the left 0, faces to the right −12, as all other drawings have them.
 * @param normal of the face as it stands, toward the eye
 */
export const lightOn = ({ right, up, into }: View, normal: Vector): number =>
  Math.round(-8.5 * dot(right, normal) + 22.9 * dot(up, normal) - 15 * dot(into, normal) - 5.4);
