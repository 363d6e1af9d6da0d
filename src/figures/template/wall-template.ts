/**
 * One wall as a full-size template: its inside face, the joint at both ends and its grooves.
 * Coordinates in mm from the wall's lower left corner as seen from inside the box, y up.
 */
import type { Design } from '../../box/design.ts';
import type { Corner } from '../../box/parts/joints/joint.ts';
import { keyLeg } from '../../box/parts/joints/miter.ts';
import { type Part, type WallName, wallNames } from '../../box/parts/part.ts';

type Point = readonly [x: number, y: number];

export interface Shape {
  /** What is sawn away, a groove or rabbet in this face, a line on the far face or inside, a line to saw later. */
  readonly as: 'waste' | 'groove' | 'hidden' | 'line';
  readonly points: readonly Point[];
  /** Short words beside it. */
  readonly label?: string;
  /** Its depth, mm, where it has one. */
  readonly depth?: number;
}

export interface WallTemplate {
  readonly name: string;
  readonly label: string;
  readonly length: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

const rectangle = (x1: number, x2: number, y1: number, y2: number): Point[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];

const wallOf = (part: Part): WallName | undefined =>
  wallNames.find((wall) => part.name === wall || part.name === `lid-${wall}`);
const isSide = (wall: WallName) => wall === 'left' || wall === 'right';

/** The joint at the left end of a wall; x from that end inward. */
function endShapes(corner: Corner, side: boolean, { plan, box }: Design, height: number): Shape[] {
  const wall = plan?.wall ?? 0;
  const { segments, taper, endHeight, keys } = corner;
  const full = side ? corner.height : endHeight;
  const top = Math.min(endHeight, corner.height);
  switch (box.joint) {
    case 'finger':
    case 'dovetail': {
      const sockets = segments.filter(
        ({ owner, from }) => owner === (side ? 'end' : 'side') && from < endHeight,
      );
      return sockets.flatMap(({ from, to }): Shape[] => {
        const spread = side ? taper : -taper;
        const low = from > 0 ? from - spread : from;
        const high = to >= top ? to : to + spread;
        const cut = Math.min(to, full);
        // On a side the socket widens from the end inward; on an end this face shows its root, the far face its mouth.
        if (side)
          return [
            {
              as: 'waste',
              points: [
                [0, from],
                [wall, low],
                [wall, high],
                [0, cut],
              ],
            },
          ];
        const mouth: Shape[] = taper > 0 ? [{ as: 'hidden', points: rectangle(0, wall, from, cut) }] : [];
        return [{ as: 'waste', points: rectangle(0, wall, low, Math.min(high, full)) }, ...mouth];
      });
    }
    case 'rabbet':
      return side
        ? [{ as: 'groove', points: rectangle(0, wall, 0, height), label: 'rabbet', depth: wall / 2 }]
        : [];
    case 'butt':
      return [];
    default:
      return [
        {
          as: 'hidden',
          points: [
            [wall, 0],
            [wall, height],
          ],
          label: 'heel',
        },
        ...keys.map(
          ({ from, to }): Shape => ({
            as: 'hidden',
            points: rectangle(0, keyLeg(wall), from, to),
            label: 'key',
          }),
        ),
      ];
  }
}

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
