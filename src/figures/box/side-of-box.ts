/** In words, from where the box on the bench is seen, for those who do not see it. */
import type { Design } from '../../box/design/design.ts';
import { outward, type WallName, wallNames } from '../../box/design/part.ts';
import { dot } from '../../geometry/convex.ts';
import type { BenchPicture } from './bench-picture.ts';
import { described } from './from-design.ts';
import type { PartOfBox } from './parts-of-box.ts';

const words: Readonly<Record<WallName, string>> = {
  front: 'the front',
  back: 'the back',
  left: 'the left side',
  right: 'the right side',
};

/** A wall that is turned away further than this shows too little of itself to be named: cosine, about 84°. */
const barely = 0.1;

/** "The front and the left side are turned to you, seen from above." */
export function sideOfBox({ view: { into } }: Pick<BenchPicture, 'view'>): string {
  const faced = wallNames
    .map((wall) => ({ wall, toward: -dot(outward[wall], into) / Math.hypot(into[0], into[1]) }))
    .filter(({ toward }) => toward > barely)
    .sort((a, b) => b.toward - a.toward)
    .map(({ wall }) => words[wall]);
  const from = into[2] < -0.02 ? ', seen from above' : into[2] > 0.02 ? ', seen from below' : '';
  const names = faced.join(' and ');
  return `${names.charAt(0).toUpperCase()}${names.slice(1)} ${faced.length > 1 ? 'are' : 'is'} turned to you${from}.`;
}

/** All that a drawing of the bench says. */
export const describedFrom = (
  design: Design,
  picture: BenchPicture,
  chosen: PartOfBox | undefined,
  isHidden: boolean,
): string =>
  `${described(design)} ${sideOfBox(picture)}${
    chosen ? ` Marked: the ${chosen}${isHidden ? ', which is hidden from here and drawn dashed' : ''}.` : ''
  }`;
