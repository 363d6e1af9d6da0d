/** Where the parts of the example are pointed at, worked out while the page is built: the bench wakes without its picture. */
import { designBox } from '../../box/design/design.ts';
import { exampleBox } from '../../box/subjects/example.ts';
import { benchPicture } from '../../figures/box/bench-picture.ts';
import { poseFor } from './bench-state.ts';
import type { PartOfBench } from './parts.ts';
import type { KnownPicture } from './use-picture.ts';

/** @param part that a first visit begins with */
export function pictureOfExample(part: PartOfBench): KnownPicture {
  const { sheet, spots } = benchPicture(designBox(exampleBox), poseFor[part], 0, 0);
  return { sheet, spots };
}
