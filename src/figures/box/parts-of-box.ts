/**
 * What of a box can be pointed at, and which seen faces belong to it. Some of it is wood of its own (lid, bottom), some
 * only faces of the walls: what was cut for a groove or a joint, and what the walls turn inward.
 */
import { type CutFor, outward, type Part, type PartName, type WallName } from '../../box/design/part.ts';
import type { Plan } from '../../box/design/plan.ts';
import { type Body, clip, dot, type Polygon, type Vector, without } from '../../geometry/convex.ts';
import { turnedBy } from '../../geometry/move.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import type { SeenFace, Shown } from '../../geometry/visible.ts';

export const partsOfBox = ['inside', 'walls', 'corners', 'grooves', 'bottom', 'lid'] as const;
export type PartOfBox = (typeof partsOfBox)[number];

/** The wall a part is, of the box or of a lift-off lid. */
export const wallOf = (name: PartName): WallName | undefined => {
  const wall = name.replace(/^lid-/, '');
  return wall in outward ? (wall as WallName) : undefined;
};

const byCut: Readonly<Partial<Record<CutFor, PartOfBox>>> = {
  joint: 'corners',
  key: 'corners',
  spline: 'corners',
  groove: 'grooves',
  'stopped groove': 'grooves',
};

type Face = Omit<SeenFace<Part>, 'polygons'>;

const opens = ({ name, of }: Face) => name.pieces.find((piece) => piece === of.solid)?.opens ?? false;

/** Where a face belongs by itself; the ends of walls are told apart by their place, see `regionsOf`. */
export function homeOf(face: Face): PartOfBox {
  const { name: part, normal, cut } = face;
  const wall = wallOf(part.name);
  const cutHome = wall && cut && byCut[cut.cutFor as CutFor];
  if (cutHome) return cutHome;
  if (part.name === 'bottom') return 'bottom';
  if (part.name === 'keys' || part.name === 'splines') return 'corners';
  if (!wall || opens(face)) return 'lid';
  return dot(outward[wall], normal) < -0.5 ? 'inside' : 'walls';
}

/** Whether a face is shown when a part of the box is chosen: with a wall all of it, joints and grooves too. */
export function isShownWith(chosen: PartOfBox, home: PartOfBox, face: Face): boolean {
  if (chosen === 'walls') return wallOf(face.name.name) !== undefined && !opens(face);
  if (chosen === 'lid') return home === 'lid' || opens(face);
  if (chosen === 'inside') return home === 'inside' || (home === 'bottom' && face.normal[2] > 0.5);
  return home === chosen;
}

/** Half of space on the sheet: where n·p < d of a thing before it was moved. */
function halfOn(view: View, { move = (point) => point }: Shown<Part>, n: Vector, d: number): Body {
  const on = onSheet(view, move([n[0] * d, n[1] * d, n[2] * d]));
  const turned = onSheet(view, turnedBy(move, n));
  return [{ n: turned, d: dot(turned, on) }];
}

/** What is taken of a wall's faces: its ends, as far in as the walls are thick, and from what it turns inward all that is not beside the room in the box. */
function dividedBy(view: View, of: Shown<Part>, { wall, floor, lidUnder }: Plan) {
  const { x, y } = of.solid.block;
  const own = wallOf(of.name.name);
  if (!own) return { ends: [], beyond: [] };
  const isSide = own === 'left' || own === 'right';
  const [low, high] = isSide ? x : y;
  const along: Vector = isSide ? [1, 0, 0] : [0, 1, 0];
  return {
    ends: [halfOn(view, of, along, low + wall), halfOn(view, of, [-along[0], -along[1], 0], wall - high)],
    beyond: [halfOn(view, of, [0, 0, 1], floor), halfOn(view, of, [0, 0, -1], -lidUnder)],
  };
}

/** One flat piece of what is seen, and where it belongs. */
export interface Region {
  readonly home: PartOfBox;
  readonly face: SeenFace<Part>;
  readonly polygon: Polygon;
}

/** All that is seen, in pieces that each belong to one part of the box. */
export function regionsOf(
  seen: readonly SeenFace<Part>[],
  plan: Plan | undefined,
  view: View,
): readonly Region[] {
  if (!plan) return [];
  const known = new Map<Shown<Part>, ReturnType<typeof dividedBy>>();
  return seen.flatMap((face) => {
    const home = homeOf(face);
    const { ends, beyond } = known.get(face.of) ?? dividedBy(view, face.of, plan);
    known.set(face.of, { ends, beyond });
    const found: Region[] = [];
    let left = face.polygons;
    const take = (bodies: readonly Body[], as: PartOfBox) => {
      for (const body of bodies) {
        for (const polygon of left.flatMap((one) => clip(one, body) ?? []))
          found.push({ home: as, face, polygon });
        left = left.flatMap((one) => without(one, body));
      }
    };
    if (home === 'walls' || home === 'inside' || home === 'lid') take(ends, 'corners');
    if (home === 'inside') take(beyond, 'walls');
    for (const polygon of left) found.push({ home, face, polygon });
    return found;
  });
}
