/** Groups of equal things, and how two groups join: the pieces that `packing.ts` chooses among. */

/** Sizes in mm as it is named; `count` of them. */
export interface Thing {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly count: number;
}

/** Equal things in rows: where the group starts, how large one place is, how many places on each axis. */
export interface Group {
  /** Index of the thing in the list given. */
  readonly thing: number;
  readonly at: readonly [x: number, y: number, z: number];
  readonly place: readonly [x: number, y: number, z: number];
  readonly places: readonly [x: number, y: number, z: number];
  readonly count: number;
}

export interface Arrangement {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly groups: readonly Group[];
  /** Share of the block that no thing fills, 0 to 1. */
  readonly waste: number;
}

export type Triple = readonly [number, number, number];

/** The ways to turn a thing, without the ones that look the same. */
function orientations({ length, width, height }: Thing): Triple[] {
  const all: Triple[] = [
    [length, width, height],
    [width, length, height],
    [length, height, width],
    [height, length, width],
    [width, height, length],
    [height, width, length],
  ];
  return all.filter(
    (one, index) => all.findIndex((other) => other.every((size, axis) => size === one[axis])) === index,
  );
}

/** Every block of places for one kind of thing in which no whole row, column or layer stays empty. */
export function blocksOf(thing: Thing, index: number): Arrangement[] {
  const found: Arrangement[] = [];
  const { count } = thing;
  for (const place of orientations(thing)) {
    for (let nx = 1; nx <= count; nx++) {
      for (let ny = 1; ny <= Math.ceil(count / nx); ny++) {
        const nz = Math.ceil(count / (nx * ny));
        // A row or column that could be left out makes the same group with more air around it.
        if ((nx - 1) * ny * nz >= count || nx * (ny - 1) * nz >= count) continue;
        const [length, width, height] = [nx * place[0], ny * place[1], nz * place[2]];
        found.push({
          length,
          width,
          height,
          groups: [{ thing: index, at: [0, 0, 0], place, places: [nx, ny, nz], count }],
          waste: 0,
        });
      }
    }
  }
  return found;
}

/** Length, width and height of an arrangement. */
export const sizes = (block: Arrangement): Triple => [block.length, block.width, block.height];

/** Two blocks, the second after the first along an axis. */
export function join(first: Arrangement, second: Arrangement, axis: 0 | 1 | 2): Arrangement {
  const a = sizes(first);
  const b = sizes(second);
  const size = a.map((length, index) => (index === axis ? length + b[index]! : Math.max(length, b[index]!)));
  const shift = (group: Group): Group => ({
    ...group,
    at: group.at.map((place, index) => (index === axis ? place + a[axis] : place)) as unknown as Triple,
  });
  return {
    length: size[0]!,
    width: size[1]!,
    height: size[2]!,
    groups: [...first.groups, ...second.groups.map(shift)],
    waste: 0,
  };
}
