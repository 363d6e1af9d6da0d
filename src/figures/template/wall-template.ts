/**
 * One wall as a full-size template: its inside face, the joint at both ends and its grooves.
 * Coordinates in mm from the wall's lower left corner as seen from inside the box, y up.
 */
import type { Design } from '../../box/design/design.ts';
import { type Part, type WallName, wallNames } from '../../box/design/part.ts';
import { endShapes, rectangle, type Shape } from './end-shapes.ts';

export interface WallTemplate {
  readonly name: string;
  readonly label: string;
  readonly length: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

const wallOf = (part: Part): WallName | undefined =>
  wallNames.find((wall) => part.name === wall || part.name === `lid-${wall}`);
const isSide = (wall: WallName) => wall === 'left' || wall === 'right';

const mirroredIn = (length: number, shape: Shape): Shape => ({
  ...shape,
  points: shape.points.map(([x, y]) => [length - x, y]),
});

function grooveShapes({ grooves }: Design, part: Part): Shape[] {
  return grooves
    .filter((groove) => groove.part === part.name)
    .map(({ edge, fromEdge, width, depth, start, stop, seat, for: panel }) => {
      const low = edge === 'lower' ? fromEdge : part.finished.width - fromEdge - width;
      return {
        as: 'groove',
        points: rectangle(start, stop, low, low + width),
        label: `${seat} for the ${panel}`,
        depth,
      };
    });
}

/** The templates of all walls that have a size. */
export function wallTemplates(design: Design): WallTemplate[] {
  return design.parts.flatMap((part) => {
    const wall = wallOf(part);
    const { length, width: height } = part.finished;
    if (!wall || !(length > 0 && height > 0)) return [];
    const side = isSide(wall);
    const frame = part.name === wall ? 'box' : 'lid';
    const cornerAt = (end: 'front' | 'back') =>
      design.corners.find((corner) => corner.of === frame && corner.end === end);
    // Seen from inside, the left end of the left side is at the back, that of the right side at the front.
    const left = cornerAt(side ? (wall === 'left' ? 'back' : 'front') : (wall as 'front' | 'back'));
    const right = cornerAt(side ? (wall === 'left' ? 'front' : 'back') : (wall as 'front' | 'back'));
    const saw: Shape[] = design.saw
      ? [design.saw.from, design.saw.to].map((y) => ({
          as: 'line',
          points: [
            [0, y],
            [length, y],
          ],
        }))
      : [];
    return [
      {
        name: part.name,
        label: part.label,
        length,
        height,
        shapes: [
          ...grooveShapes(design, part),
          ...(left ? endShapes(left, side, design, height) : []),
          ...(right ? endShapes(right, side, design, height).map((shape) => mirroredIn(length, shape)) : []),
          ...saw,
        ],
      },
    ];
  });
}
