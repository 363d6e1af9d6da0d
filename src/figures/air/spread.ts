/**
 * Moves places along a line apart until no two are nearer than `gap`, as little as it takes and within `low` to `high`.
 * @returns the new places, in the order given.
 */
export function spread(places: readonly number[], gap: number, low: number, high: number): number[] {
  const order = places.map((_, index) => index).sort((a, b) => places[a]! - places[b]!);
  const moved = [...places];
  let floor = low;
  for (const index of order) {
    moved[index] = Math.max(moved[index]!, floor);
    floor = moved[index]! + gap;
  }
  let ceiling = high;
  for (const index of order.reverse()) {
    moved[index] = Math.min(moved[index]!, ceiling);
    ceiling = moved[index]! - gap;
  }
  return moved;
}
