/**
 * The box on the bench, from any side: the chosen part in full wood with a heavy edge, the rest paled, and where nothing
 * of the chosen part is seen, its outlines dashed behind what covers it. A group with `data-part` for each part.
 */
import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import { dot } from '../../geometry/convex.ts';
import { facesOf } from '../../geometry/faces.ts';
import { turnedBy } from '../../geometry/move.ts';
import { onSheet } from '../../geometry/view.ts';
import type { SeenFace } from '../../geometry/visible.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { BenchPicture } from './bench-picture.ts';
import { LitFaces } from './LitFaces.tsx';
import { homeOf, isShownWith, type PartOfBox, partsOfBox } from './parts-of-box.ts';
import { areas, edges, type Placing } from './paths.ts';
import { describedFrom } from './side-of-box.ts';

/** Millimeters on the sheet are the units of the drawing. */
const asItIs: Placing = { scale: 1, x: 0, y: 0 };

interface Props {
  design: Design;
  picture: BenchPicture;
  /** None: all of it in full wood. */
  chosen: PartOfBox | undefined;
  /** Path data of the growth rings on some faces: drawn once they are known, since they take several times as long. */
  ringsOn?: ((faces: readonly SeenFace<Part>[]) => string) | undefined;
  /** Where it wakes later than what is around it, see `Drawing`. */
  id?: string;
}

interface Group {
  readonly part: PartOfBox;
  readonly isChosen: boolean;
  readonly faces: SeenFace<Part>[];
}

/** What is seen, by the part it belongs to. */
function groupsOf({ seen, regions }: BenchPicture, chosen: PartOfBox | undefined): readonly Group[] {
  const found = new Map<string, Group>();
  const add = (part: PartOfBox, face: SeenFace<Part>) => {
    const isChosen = chosen !== undefined && isShownWith(chosen, part, face);
    const key = `${part}${isChosen}`;
    const group = found.get(key) ?? { part, isChosen, faces: [] };
    found.set(key, group);
    group.faces.push(face);
  };
  // Corners and inside are parts of faces; a face that is whole has fewer pieces.
  if (chosen === 'corners' || chosen === 'inside')
    for (const { home, face, polygon } of regions) add(home, { ...face, polygons: [polygon] });
  else for (const face of seen) add(homeOf(face), face);
  return [...found.values()].sort((a, b) => partsOfBox.indexOf(a.part) - partsOfBox.indexOf(b.part));
}

/** Outlines of what is chosen and covered. */
function covered({ shown, view }: BenchPicture, chosen: PartOfBox): string {
  const polygons = shown.flatMap((of) => {
    const { name, solid, move = (point) => point } = of;
    return facesOf(solid)
      .filter(
        ({ normal, cut }) =>
          isShownWith(chosen, homeOf({ name, normal, cut, of }), { name, normal, cut, of }) &&
          dot(view.into, turnedBy(of.move, normal)) < -1e-6,
      )
      .flatMap((face) =>
        face.polygons.map(({ points, drawn }) => ({
          points: points.map((point) => onSheet(view, move(point))),
          drawn,
        })),
      );
  });
  return edges(polygons, asItIs);
}

const titles = {
  closed: 'closed',
  open: 'open',
  'lid off': 'its lid off',
  apart: 'taken apart',
} as const satisfies Readonly<Record<BenchPicture['pose'], string>>;

export function BenchBox({ design, picture, chosen, ringsOn, id }: Props) {
  const { view, pose, sheet } = picture;
  const groups = groupsOf(picture, chosen);
  const own = groups.filter(({ isChosen }) => isChosen);
  const drawn = ({ part, isChosen, faces }: Group) => (
    <g key={part} data-part={part} class={chosen === undefined || isChosen ? undefined : 'paled'}>
      <LitFaces faces={faces} view={view} placing={asItIs} rings={ringsOn?.(faces) ?? ''} />
    </g>
  );
  const isHidden = chosen !== undefined && own.length === 0;
  return (
    <Drawing
      id={id}
      view={sheet}
      title={`The box, ${titles[pose]}`}
      description={describedFrom(design, picture, chosen, isHidden)}
      class="bench-box"
    >
      <g>{groups.filter(({ isChosen }) => !isChosen).map(drawn)}</g>
      {/* Twice as wide as it is seen: the wood covers its inner half. */}
      {own.length > 0 && (
        <path
          class="chosen-part"
          d={areas(
            own.flatMap(({ faces }) => faces.flatMap(({ polygons }) => polygons)),
            asItIs,
          )}
        />
      )}
      <g>{own.map(drawn)}</g>
      {isHidden && <path class="chosen-covered" d={covered(picture, chosen)} />}
    </Drawing>
  );
}
