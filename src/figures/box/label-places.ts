/** Where the names of the parts stand beside the box: in two columns, each near what it names, none on another. px. */

import type { BenchPicture } from './bench-picture.ts';
import { type PartOfBox, partsOfBox } from './parts-of-box.ts';
import type { Spot } from './spots.ts';

export interface LabelPlace {
  readonly part: PartOfBox;
  readonly side: 'left' | 'right';
  /** Top of the label. */
  readonly top: number;
  /** What it points at. */
  readonly spot: readonly [x: number, y: number];
  readonly hidden: boolean;
}

/** Room for the drawing and the names beside it. px */
export interface Around {
  readonly width: number;
  readonly height: number;
  /** Left free for names at each side, and for air above and below. */
  readonly beside: number;
  readonly above: number;
}

/** Where the spots of a picture lie on the screen, when its sheet is made as large as there is room and set in the middle. */
export function spotsOnScreen(
  { sheet: [left, top, wide, high], spots }: Pick<BenchPicture, 'sheet' | 'spots'>,
  { width, height, beside, above }: Around,
): BenchPicture['spots'] {
  const scale = Math.min((width - 2 * beside) / wide, (height - 2 * above) / high);
  return Object.fromEntries(
    Object.entries(spots).map(([part, { at, hidden }]) => [
      part,
      {
        at: [width / 2 + (at[0] - left - wide / 2) * scale, height / 2 + (at[1] - top - high / 2) * scale],
        hidden,
      },
    ]),
  ) as unknown as BenchPicture['spots'];
}

/** Height of a label with its size and the count of warnings. */
const high = 66;
/** From a label's top to the middle of its name, where the line begins. */
export const nameMiddle = 13;

/** Moves what is in order by height apart, as little as is needed, within a column. */
function spread(wanted: readonly number[], height: number): number[] {
  const tops: number[] = [];
  for (const top of wanted) tops.push(Math.max(top, tops.length > 0 ? tops.at(-1)! + high : 0));
  for (let place = tops.length - 1, most = height - high; place >= 0; place--, most -= high)
    tops[place] = Math.max(0, Math.min(tops[place]!, most));
  return tops;
}

/**
 * @param spots of the parts, on the screen
 * @param height of the column
 */
export function labelPlaces(spots: Readonly<Record<PartOfBox, Spot>>, height: number): readonly LabelPlace[] {
  const byX = [...partsOfBox].sort((a, b) => spots[a].at[0] - spots[b].at[0]);
  return (['left', 'right'] as const).flatMap((side) => {
    const column = (side === 'left' ? byX.slice(0, 3) : byX.slice(3)).sort(
      (a, b) => spots[a].at[1] - spots[b].at[1],
    );
    const tops = spread(
      column.map((part) => spots[part].at[1] - nameMiddle),
      height,
    );
    return column.map((part, place) => ({
      part,
      side,
      top: tops[place]!,
      spot: spots[part].at,
      hidden: spots[part].hidden,
    }));
  });
}
