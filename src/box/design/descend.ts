/** A search downhill: from a box by single moves to one that costs nothing, or to where no single move helps. */
import type { Box } from '../subjects/inputs.ts';

/**
 * Takes the first move that costs less, again and again.
 * @param moves boxes one move away from a box, the likeliest help first
 * @param costOf 0 where nothing is wrong; dear, so it is asked once a box
 * @param most how often it is asked at most
 */
export function descend(
  from: Box,
  moves: (box: Box) => Iterable<Box>,
  costOf: (box: Box) => number,
  most: number,
): { readonly box: Box; readonly cost: number } {
  let [box, cost, asked] = [from, costOf(from), 1];
  for (let found = true; found && cost > 0; ) {
    found = false;
    for (const next of moves(box)) {
      if (asked++ >= most) break;
      const costs = costOf(next);
      if (costs >= cost) continue;
      [box, cost, found] = [next, costs, true];
      break;
    }
  }
  return { box, cost };
}
