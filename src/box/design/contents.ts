/**
 * The things that go in size the box. They lie as one block, `contentsLength` by `contentsWidth` by `contentsHeight`; a
 * change of the list moves that block at once, and no further than it must.
 *
 * A block that no way of laying the things makes is the reader's own: it stays while the things fit into it. So does a
 * size of the box that the reader gave: there the things must fit in.
 */

import type { Item } from '../core/field.ts';
import type { Box } from '../subjects/inputs.ts';
import { both } from './refusal.ts';
import { axes, blockOf, fitsBlock, isLaid, nearest, waysToLie, whyNoWay } from './ways-to-lie.ts';

const block = (box: Pick<Box, (typeof axes)[number]['block']>) =>
  axes.map(({ block: name }) => both(box[name])).join(' by ');

/** What a new list changes, in one step, and what is to be said of it; or why it cannot be. */
export type NewContents =
  | { readonly inputs: Partial<Box>; readonly note?: string }
  | { readonly refused: string };

/**
 * What a change of the list of things makes of the box.
 *
 * The block stays where the new things still make it, or where it is the reader's own and holds them; otherwise they
 * are laid the way that moves it least, or the best way where nothing lay in it so far. What fits in no way is refused,
 * unless the things fitted in none before: then the list changes and the sizes wait.
 * @param items the whole new list; sizes and counts within the limits of a thing.
 */
export function withItems(box: Box, items: readonly Item[]): NewContents {
  const isNew = box.items.length === 0;
  const renamed =
    items.length === box.items.length &&
    items.every(({ length, width, height, count }, index) => {
      const old = box.items[index]!;
      return length === old.length && width === old.width && height === old.height && count === old.count;
    });
  if (items.length === 0 || renamed) return { inputs: { items } };
  const ways = waysToLie(box, items);
  const before = waysToLie(box);
  if (ways.length === 0) {
    const fitted = isNew || before.length > 0;
    return fitted && items.length >= box.items.length
      ? { refused: `${whyNoWay(box, items)} Nothing has changed.` }
      : { inputs: { items } };
  }
  if (ways.some((way) => isLaid(box, way))) return { inputs: { items } };
  const isOwn = !isNew && !before.some((way) => isLaid(box, way));
  if (isOwn && fitsBlock(box, items)) return { inputs: { items } };
  const laid = blockOf(isNew ? ways[0]! : nearest(box, ways));
  return {
    inputs: { items, ...laid },
    ...(isOwn &&
      box.sizeFrom === 'contents' && {
        note: `The things no longer fit into the ${block(box)} you had set for the contents: it is now ${block(laid)}. One step back brings it again.`,
      }),
  };
}
