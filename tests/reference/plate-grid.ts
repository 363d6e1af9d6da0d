/**
 * The notes of a plate of wood by finite differences: the bending operator as a matrix over a grid of points, and its
 * lowest eigenvalues by iterating on a block of vectors. No series and no sine: another way to the numbers of
 * `src/calc/bottom/modes.ts`. Edges carried (free to turn) or held fast; two grids are brought to an endless one.
 */

/** Bending stiffnesses along, across and mixed (H of the textbooks), N m; sides in m; mass in kg/m². */
export interface Plate {
  readonly along: number;
  readonly across: number;
  readonly mixed: number;
  readonly a: number;
  readonly b: number;
  readonly mass: number;
}

type Edges = 'carried' | 'held';

/** Lower half of the banded, symmetric matrix: `rows[i][k]` is the entry at column i − band + k. */
function operator({ along, across, mixed, a, b }: Plate, edges: Edges, nx: number, ny: number) {
  const [dx, dy] = [a / (nx + 1), b / (ny + 1)];
  const size = nx * ny;
  const band = 2 * ny;
  const rows = Array.from({ length: size }, () => new Float64Array(band + 1));
  // Beyond an edge the plate goes on upside down where it may turn, and as its mirror image where it is held.
  const ghost = edges === 'carried' ? -1 : 1;
  const add = (row: number, i: number, j: number, value: number) => {
    if (i < 0 || i >= nx || j < 0 || j >= ny) return;
    const column = i * ny + j;
    if (column <= row) rows[row]![column - row + band]! += value;
  };
  const fourth = [1, -4, 6, -4, 1];
  const second = [1, -2, 1];
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++) {
      const row = i * ny + j;
      fourth.forEach((c, k) => {
        const [di, dj] = [i + k - 2, j + k - 2];
        if (di === -2 || di === nx + 1) add(row, i, j, (ghost * c * along) / dx ** 4);
        else add(row, di, j, (c * along) / dx ** 4);
        if (dj === -2 || dj === ny + 1) add(row, i, j, (ghost * c * across) / dy ** 4);
        else add(row, i, dj, (c * across) / dy ** 4);
      });
      second.forEach((c, k) => {
        second.forEach((d, l) => {
          add(row, i + k - 1, j + l - 1, (2 * mixed * c * d) / (dx * dy) ** 2);
        });
      });
    }
  return { rows, band };
}

/** Solves with the matrix, after Cholesky's factors have taken its place. */
function solver({ rows, band }: ReturnType<typeof operator>) {
  const size = rows.length;
  for (let i = 0; i < size; i++)
    for (let j = Math.max(0, i - band); j <= i; j++) {
      let sum = rows[i]![j - i + band]!;
      for (let k = Math.max(0, i - band, j - band); k < j; k++)
        sum -= rows[i]![k - i + band]! * rows[j]![k - j + band]!;
      rows[i]![j - i + band] = i === j ? Math.sqrt(sum) : sum / rows[j]![band]!;
    }
  return (right: Float64Array) => {
    const x = Float64Array.from(right);
    for (let i = 0; i < size; i++) {
      for (let k = Math.max(0, i - band); k < i; k++) x[i]! -= rows[i]![k - i + band]! * x[k]!;
      x[i]! /= rows[i]![band]!;
    }
    for (let i = size - 1; i >= 0; i--) {
      x[i]! /= rows[i]![band]!;
      for (let k = Math.max(0, i - band); k < i; k++) x[k]! -= rows[i]![k - i + band]! * x[i]!;
    }
    return x;
  };
}

const dot = (x: Float64Array, y: Float64Array) => x.reduce((sum, value, i) => sum + value * y[i]!, 0);

/** Lowest eigenvalues of one grid: vectors are solved for and made upright to one another until they stay. */
function lowest(plate: Plate, edges: Edges, nx: number, ny: number, count: number): number[] {
  const solve = solver(operator(plate, edges, nx, ny));
  // Any start with something of every shape in it.
  let block: Float64Array[] = Array.from({ length: count + 6 }, (_, k) =>
    Float64Array.from({ length: nx * ny }, (_, i) => Math.sin((k + 1.3) * (i + 1) ** 1.1)),
  );
  let values: number[] = [];
  for (let round = 0; round < 60; round++) {
    const solved = block.map(solve);
    const upright: Float64Array[] = [];
    values = [];
    for (const vector of solved) {
      for (const other of upright) {
        const share = dot(vector, other);
        for (let i = 0; i < vector.length; i++) vector[i]! -= share * other[i]!;
      }
      const long = Math.sqrt(dot(vector, vector));
      values.push(1 / long);
      upright.push(vector.map((value) => value / long));
    }
    block = upright;
  }
  return values.sort((one, other) => one - other).slice(0, count);
}

/** The lowest notes, Hz: those of two grids, brought to one without end (the error goes with the square of a step). */
export function gridNotes(plate: Plate, edges: Edges, count: number): number[] {
  const notes = (nx: number, ny: number) =>
    lowest(plate, edges, nx, ny, count).map((value) => Math.sqrt(value / plate.mass) / (2 * Math.PI));
  const [coarse, fine] = [notes(19, 15), notes(39, 31)];
  return fine.map((note, i) => note + (note - coarse[i]!) / 3);
}
