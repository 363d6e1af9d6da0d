/** Which inputs of the box move anything now: the size comes from the contents or from a wanted size, never from both. */
import type { Box } from './box.ts';

const byContents: readonly (keyof Box)[] = [
  'contentsLength',
  'contentsWidth',
  'contentsHeight',
  'clearance',
  'headroom',
  'fingerRoom',
];
const byWanted: readonly (keyof Box)[] = ['wantedLength', 'wantedWidth', 'wantedHeight'];

/** Whether this input moves the sizes of this box; inputs that are not about size always count. */
export function isInForce(name: keyof Box, box: Box): boolean {
  return !(box.sizeFrom === 'contents' ? byWanted : byContents).includes(name);
}
