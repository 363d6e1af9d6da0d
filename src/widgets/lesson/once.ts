/** The last result, kept while what it depends on stays the same: for work that costs more than a part of a frame. */
export function once<In, Out>(
  keysOf: (from: In) => readonly unknown[],
  work: (from: In) => Out,
): (from: In) => Out {
  let last: { keys: readonly unknown[]; found: Out } | undefined;
  return (from) => {
    const keys = keysOf(from);
    if (!last?.keys.every((key, at) => Object.is(key, keys[at]))) last = { keys, found: work(from) };
    return last.found;
  };
}
