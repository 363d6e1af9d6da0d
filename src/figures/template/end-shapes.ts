/** The joint at one end of a wall, as lines on its inside face. */
import type { Design } from '../../box/design/design.ts';
import type { Corner } from '../../box/design/joints/joint.ts';
import { keyLeg } from '../../box/design/joints/miter.ts';

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

export const rectangle = (x1: number, x2: number, y1: number, y2: number): Point[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];

/** The joint at the left end of a wall; x from that end inward. */
export function endShapes(corner: Corner, side: boolean, { plan, box }: Design, height: number): Shape[] {
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
      return sockets.flatMap(({ from, to: end, socketTo }): Shape[] => {
        // In a side the socket is a whole finger high, also where the front is lowered within it.
        const to = side ? (socketTo ?? end) : end;
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
