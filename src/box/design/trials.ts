/** Trying the values of a number by whole marks: which ones, where what they give changes, and the stretches between. */

/** From one mark to another, both included. */
export type Stretch = readonly [from: number, to: number];

/** Every mark within so many of the present value is tried, and beyond that fewer and fewer. */
const dense = 12;
const growth = 1.4;

/** Numbers of steps at which a value is tried: all near the present one, both ends, and ever fewer on the way. */
export function tried(least: number, most: number, now: number): number[] {
  const found = new Set([least, most]);
  for (const way of [1, -1])
    for (let off = 0, by = 1; ; off += by) {
      const count = now + way * Math.round(off);
      if (count < least || count > most) break;
      found.add(count);
      if (off >= dense) by *= growth;
    }
  return [...found].sort((a, b) => a - b);
}

/** Tries between neighbors that stand differently, until the marks on both sides of each border are known. */
export function closeIn(counts: readonly number[], sortOf: (count: number) => string): void {
  for (const [place, from] of counts.entries()) {
    const to = counts[place + 1];
    if (to === undefined) return;
    let [low, high] = [from, to];
    while (high - low > 1 && sortOf(low) !== sortOf(high)) {
      const middle = Math.floor((low + high) / 2);
      if (sortOf(middle) === sortOf(low)) low = middle;
      else high = middle;
    }
  }
}

/** Runs of neighboring trials that satisfy; what lies between two that do is taken to do so too. */
export function stretchesOf(counts: readonly number[], satisfies: (count: number) => boolean): Stretch[] {
  const found: [number, number][] = [];
  let isOpen = false;
  for (const count of counts) {
    const is = satisfies(count);
    if (is && isOpen) found.at(-1)![1] = count;
    else if (is) found.push([count, count]);
    isOpen = is;
  }
  return found;
}

/** One mark beyond the band that is nearest to the present value, on both sides; without a band, that value. */
export function besideOf(kept: readonly Stretch[], start: number): number[] {
  const distance = ([from, to]: Stretch) => Math.max(from - start, start - to, 0);
  const [near] = [...kept].sort((a, b) => distance(a) - distance(b));
  return near ? [near[0] - 1, near[1] + 1] : [start];
}
