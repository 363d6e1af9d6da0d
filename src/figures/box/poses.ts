/** The ways a box can stand on the bench, and how its pieces move for each. */
import type { Design } from '../../box/design/design.ts';
import { outward, type Part, type WallName } from '../../box/design/part.ts';
import type { Vector } from '../../geometry/convex.ts';
import type { Shown } from '../../geometry/visible.ts';
import { shifted } from './from-design.ts';
import { openingOf } from './opening.ts';

export type Pose = 'closed' | 'open' | 'lid off' | 'apart';
export const poses: readonly Pose[] = ['closed', 'open', 'lid off', 'apart'];

/** Where each piece goes: walls outward, the lid up, the bottom down, what joins a corner out of its corner. */
function apart(design: Design, part: Part, index: number): Vector {
  const { outsideLength: L, outsideWidth: W, outsideHeight: H } = design.values;
  const piece = part.pieces[index]!;
  const away = 0.3 * Math.min(L, W) + 2 * design.values.wall;
  // A sliding lid is as long as the box: it must rise further to leave the walls in view.
  const up = piece.opens ? H + (design.values.kind === 'sliding' ? 0.9 : 0.35) * away : 0;
  const name = part.name.replace(/^(lid|liner)-/, '');
  const way = outward[name as WallName];
  if (way) {
    const out = part.name.startsWith('liner') ? 0 : away;
    return [way[0] * out, way[1] * out, up];
  }
  if (part.name === 'bottom') return [0, 0, -H - 0.35 * away];
  if (part.name === 'lid')
    return [0, 0, design.values.kind === 'sliding' ? up : up + 1.2 * design.values.lidHeight];
  if (part.name === 'pull') return [-away / 2, 0, up];
  const { x, y } = piece.block;
  const out = 0.6 * away;
  return [x[0] > L / 2 ? out : -out, y[0] > W / 2 ? out : -out, up];
}

/** Every piece of a design as it stands in a pose. */
export function posed(design: Design, pose: Pose): Shown<Part>[] {
  const open = pose === 'open' ? openingOf(design) : undefined;
  return design.parts.flatMap((part) =>
    part.pieces.flatMap((solid, index): Shown<Part>[] => {
      if (pose === 'lid off' && solid.opens) return [];
      const move =
        pose === 'apart' ? shifted(apart(design, part, index)) : solid.opens && open ? open.move : undefined;
      return [{ name: part, solid, move }];
    }),
  );
}
