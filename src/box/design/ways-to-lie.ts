/**
 * The ways the contents of a box may lie: as one block, `contentsLength` by `contentsWidth` by `contentsHeight`. With a
 * size that the reader gave, the block must fit into it; otherwise the box is built around it.
 */

import { type Arrangement, arrangements } from '../../calc/size/packing.ts';
import type { Item } from '../core/field.ts';
import type { Box } from '../subjects/inputs.ts';
import { fields } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { both } from './refusal.ts';

/** One size of the block: its input, the inside around it, and its word. */
export const axes = [
  { block: 'contentsLength', inside: 'insideLength', size: 'length' },
  { block: 'contentsWidth', inside: 'insideWidth', size: 'width' },
  { block: 'contentsHeight', inside: 'insideHeight', size: 'height' },
] as const;

/** Length to width that ways of laying are ranked by: ours, near the plan of the usual box. */
const ratio = 1.5;
/** Sizes closer than this are one size, mm. */
const same = 0.01;

type Most = readonly [length: number, width: number, height: number];

/** The largest block, mm: what the fields hold and, in a box of given size, what is left within it. */
function mostOf(box: Box): Most {
  const [length, width, height] = axes.map(({ block }) => fields[block].high);
  const most = [length!, width!, height!] as const;
  if (box.sizeFrom === 'contents') return most;
  const given = evaluate(box);
  const asked = evaluate({ ...box, sizeFrom: 'contents' });
  const room = (axis: 0 | 1 | 2) => {
    const { block, inside } = axes[axis];
    const besides = asked[inside] - box[block];
    return Math.min(most[axis], given[inside] - besides);
  };
  return [room(0), room(1), room(2)];
}

/** The last searches for a list: a page asks for the same ones many times, and a long list takes a second. */
const found = new WeakMap<readonly Item[], Map<string, { key: string; ways: readonly Arrangement[] }>>();

function search(items: readonly Item[], within: 'around' | 'given' | 'block' | 'anything', most?: Most) {
  const searches = found.get(items) ?? new Map<string, { key: string; ways: readonly Arrangement[] }>();
  found.set(items, searches);
  const key = String(most);
  const known = searches.get(within);
  if (known?.key === key) return known.ways;
  const ways = arrangements(items, { ratio, best: Infinity, ...(most && { most }) }).filter((way) => {
    const laid = blockOf(way);
    return (
      // A box that is built around them is as long as its longer side.
      (within !== 'around' || way.length >= way.width - 1e-9) &&
      // Where less is left than a field holds, its least does not fit.
      (!most || axes.every(({ block }, axis) => laid[block] <= most[axis]! + 1e-9))
    );
  });
  searches.set(within, { key, ways });
  return ways;
}

/**
 * Every way the things may lie in this box, best first; none where nothing fits, or where nothing goes in.
 * @param items the things; those of the box where none are given.
 */
export const waysToLie = (box: Box, items: readonly Item[] = box.items): readonly Arrangement[] =>
  search(items, box.sizeFrom === 'contents' ? 'around' : 'given', mostOf(box));

/** The block of things laid like this, as the inputs of the box; what is thinner than a field holds gets that much. */
export function blockOf(way: Arrangement): Pick<Box, (typeof axes)[number]['block']> {
  const [contentsLength, contentsWidth, contentsHeight] = axes.map(({ block, size }) =>
    Math.max(way[size], fields[block].low),
  );
  return { contentsLength: contentsLength!, contentsWidth: contentsWidth!, contentsHeight: contentsHeight! };
}

/** Whether the contents of this box lie like this. */
export function isLaid(box: Box, way: Arrangement): boolean {
  const block = blockOf(way);
  return axes.every(({ block: name }) => Math.abs(block[name] - box[name]) < same);
}

/** Whether the things fit into the block as it is, and it into the box. */
export function fitsBlock(box: Box, items: readonly Item[] = box.items): boolean {
  const most = mostOf(box);
  const block = [box.contentsLength, box.contentsWidth, box.contentsHeight] as const;
  return block.every((size, axis) => size <= most[axis]! + same) && search(items, 'block', block).length > 0;
}

/**
 * The way that moves the block least, so that one corrected millimeter does not turn the contents over: growing and
 * shrinking count by their logarithm, air among the things too. Of equal ones the best.
 */
export function nearest(box: Box, ways: readonly Arrangement[]): Arrangement {
  const moves = (way: Arrangement) => {
    const change = axes.reduce(
      (sum, { block, size }) => sum + Math.abs(Math.log(way[size] / box[block])),
      -Math.log(1 - way.waste),
    );
    return Math.round(change * 1e6);
  };
  return ways.reduce((best, way) => (moves(way) < moves(best) ? way : best));
}

/** What does not fit, by how much, and what to do, where the things fit in no way. */
export function whyNoWay(box: Box, items: readonly Item[] = box.items): string {
  const most = mostOf(box);
  const excess = (way: Arrangement) =>
    axes.map(({ block }, axis) => Math.max(0, blockOf(way)[block] - most[axis]!));
  const total = (way: Arrangement) => excess(way).reduce((sum, over) => sum + over, 0);
  const closest = search(items, 'anything').reduce((best, way) => (total(way) < total(best) ? way : best));
  const over = excess(closest)
    .map((size, axis) => size > 1e-9 && `${both(size, 'up')} more ${axes[axis]!.size}`)
    .filter(Boolean)
    .join(' and ');
  return box.sizeFrom === 'contents'
    ? `These things are too large for a box here: laid closest, they need ${over} than the ${most.map((size) => both(size)).join(' by ')} that contents may have. Check the sizes, or take fewer.`
    : `These things do not fit into the size you gave: laid closest, they need ${over}. Make the box larger, take fewer, or let its size come from the contents.`;
}
