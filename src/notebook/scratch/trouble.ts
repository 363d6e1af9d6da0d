/** Why a cell has no result: a sentence for the reader. */

export class Trouble extends Error {}

/** Letters that must be added, dropped or changed to make one word of another. */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + Number(one[i - 1] !== other[j - 1])));
    row = next;
  }
  return row[other.length]!;
}

/** The names most like what was written, three at most, none that is far from it. */
export function nearest(written: string, names: readonly string[]): readonly string[] {
  const asked = written.toLowerCase().slice(0, 60);
  return names
    .map((name) => {
      const plain = name.toLowerCase();
      const end = plain.split('.').at(-1)!;
      const within = asked.length > 3 && plain.includes(asked) ? 1 : Number.POSITIVE_INFINITY;
      return { name, far: Math.min(within, distance(asked, plain), distance(asked, end) + 0.5) };
    })
    .filter(({ far }) => far <= Math.max(1, asked.length / 3))
    .sort((a, b) => a.far - b.far || a.name.length - b.name.length)
    .slice(0, 3)
    .map(({ name }) => name);
}
