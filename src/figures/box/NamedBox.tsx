/**
 * The box, its lid open, on a sheet of one size, with a line from each part to where its name stands beside it. In this
 * pose all parts of a usual box are seen at once, so nothing moves when another is chosen.
 */
import type { Design } from '../../box/design/design.ts';
import { BenchBox } from './BenchBox.tsx';
import { type BenchPicture, benchPicture } from './bench-picture.ts';
import { Leaders } from './Leaders.tsx';
import { type Around, type LabelPlace, labelPlaces, spotsOnScreen } from './label-places.ts';
import type { PartOfBox } from './parts-of-box.ts';

/** Keep in step with `styles/rules.css`. */
const sheet: Around = { width: 600, height: 430, beside: 124, above: 10 };
/** Kept free below the names: there stands what names the whole box. px */
const low = 54;
/** Air around what is seen, for heavy edges: a share of its width. */
const edge = 0.01;

/** A picture as large as what is seen in it: this one is never turned. */
function cropped(picture: BenchPicture): BenchPicture {
  const points = picture.seen.flatMap(({ polygons }) => polygons.flatMap((polygon) => polygon.points));
  if (points.length === 0) return picture;
  let [left, right, top, foot] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    foot = Math.max(foot, y);
  }
  const air = edge * (right - left);
  return { ...picture, sheet: [left - air, top - air, right - left + 2 * air, foot - top + 2 * air] };
}

/** A box as it is drawn here, and where the names of its parts stand, px. */
export interface Named {
  readonly design: Design;
  readonly picture: BenchPicture;
  readonly places: readonly LabelPlace[];
}

/** `undefined` where there is no room between four walls. */
export function namedOf(design: Design): Named | undefined {
  if (design.parts.length === 0) return undefined;
  const picture = cropped(benchPicture(design, 'open', 0, 0));
  return { design, picture, places: labelPlaces(spotsOnScreen(picture, sheet), sheet.height - low) };
}

/** @param chosen none: all of it in full wood */
export const NamedBox = ({
  named: { design, picture, places },
  chosen,
}: {
  named: Named;
  chosen: PartOfBox | undefined;
}) => (
  <>
    <div class="named-drawing">
      <BenchBox design={design} picture={picture} chosen={chosen} />
    </div>
    <Leaders
      places={places}
      width={sheet.width}
      height={sheet.height}
      beside={sheet.beside}
      chosen={chosen}
    />
  </>
);
