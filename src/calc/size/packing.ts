/**
 * How things may lie together in a box: rows, columns and layers of equal things, and groups beside, behind or
 * on top of each other where there are several kinds.
 *
 * A group of one kind is a block of nx × ny × nz places, each holding one thing in one of its six orientations;
 * places may stay empty (9 things need 2 × 5 × 1 places, one stays free). Several groups join one after the other
 * along an axis, each join wasting what the smaller face leaves open. That is how drawers, trays and divided boxes
 * are packed by hand; it is not the densest packing there is, and it does not try to be. (Over 150 lines: blocks,
 * joins and their ranking are one search.)
 */

import { type Arrangement, blocksOf, join, sizes, type Thing } from './packing-blocks.ts';

export type { Arrangement, Thing } from './packing-blocks.ts';

export interface Wanted {
  /** Wanted length to width of the block; arrangements far from it rank lower. */
  readonly ratio?: number;
  /** Largest block that may be used, mm; infinite where nothing limits it. */
  readonly most?: readonly [length: number, width: number, height: number];
  /** How many arrangements to return. */
  readonly best?: number;
}

const volume = (block: Arrangement) => block.length * block.width * block.height;

/** How many partial arrangements are kept while groups are joined, so that long lists stay quick. */
const kept = 120;

/**
 * Arrangements of all things, best first: little waste, a ratio near the wanted one, not a tower.
 * @param things at most 20 kinds; sizes positive, counts whole and at most 1000 (the caller checks its fields).
 * @returns an empty list where nothing fits `most`, or where there is nothing to arrange. The longer side is the length
 *   unless `most` asks otherwise.
 */
export function arrangements(things: readonly Thing[], wanted: Wanted = {}): Arrangement[] {
  const { most = [Infinity, Infinity, Infinity], best = 12 } = wanted;
  const filled = things.reduce(
    (sum, { length, width, height, count }) => sum + length * width * height * count,
    0,
  );
  const fits = (block: Arrangement) => sizes(block).every((size, axis) => size <= most[axis]! + 1e-9);
  const badness = (block: Arrangement) => {
    const ratio = block.length / block.width;
    const away = wanted.ratio ? Math.abs(Math.log(ratio / wanted.ratio)) : 0;
    // A block higher than wide is a tower: it can be built, but the contents are hard to reach.
    const tower = Math.max(0, Math.log(block.height / block.width));
    return 1 - filledShare(block) + 0.5 * away + tower;
  };
  const filledShare = (block: Arrangement) =>
    block.groups.reduce((sum, { thing, count }) => {
      const { length, width, height } = things[thing]!;
      return sum + length * width * height * count;
    }, 0) / volume(block);
  const sorted = (blocks: Arrangement[]) =>
    blocks
      .filter(fits)
      .map((block) => ({ block, rank: badness(block) }))
      .sort((a, b) => a.rank - b.rank)
      .map(({ block }) => block);

  let partial: Arrangement[] | undefined;
  things.forEach((thing, index) => {
    const blocks = sorted(blocksOf(thing, index));
    partial = partial
      ? sorted(
          partial
            .slice(0, kept)
            .flatMap((first) =>
              blocks
                .slice(0, kept / 4)
                .flatMap((second) => ([0, 1, 2] as const).map((axis) => join(first, second, axis))),
            ),
        ).slice(0, kept)
      : blocks;
  });
  const whole = (partial ?? []).filter((block) => wanted.most || block.length >= block.width - 1e-9);
  const seen = new Set<string>();
  return whole
    .filter((block) => {
      const size = sizes(block)
        .map((length) => length.toFixed(2))
        .join();
      return seen.has(size) ? false : seen.add(size);
    })
    .slice(0, best)
    .map((block) => ({ ...block, waste: 1 - filled / volume(block) }));
}
