/** The growth-ring figure of a flat face of wood: the lines where the rings of a log meet it, as one path. */
import { contours } from 'd3-contour';
import { type LogPoint, type RingLog, ringField } from '../../calc/board/rings.ts';

/** A rectangle in a log. Its own coordinates run from `origin`: u along `along`, v along `across`, both unit vectors. */
export interface FacePlacement {
  readonly origin: LogPoint;
  readonly along: LogPoint;
  readonly across: LogPoint;
  /** mm along u and along v. */
  readonly length: number;
  readonly width: number;
}

type Place = [u: number, v: number];

/** Most lines on one face: closer rings are drawn every second, third … year. */
const mostLines = 40;
/** Cells of the grid on which the rings are sought: about this size, mm, but never more than these. */
const cell = 4;
const mostCells = [48, 32] as const;

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** Drops the points of a line that lie within `off` of it without them. */
function simpler(line: readonly Place[], off: number): readonly Place[] {
  const [from, to] = [line[0]!, line.at(-1)!];
  const [du, dv] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(du, dv);
  let [farthest, at] = [off, 0];
  for (let i = 1; i < line.length - 1; i++) {
    const [u, v] = [line[i]![0] - from[0], line[i]![1] - from[1]];
    const distance = length > 1e-9 ? Math.abs(du * v - dv * u) / length : Math.hypot(u, v);
    if (distance > farthest) [farthest, at] = [distance, i];
  }
  return at
    ? [...simpler(line.slice(0, at + 1), off).slice(0, -1), ...simpler(line.slice(at), off)]
    : [from, to];
}

/** The lines as polylines in the face's own coordinates, mm. */
export function grainLines(face: FacePlacement, log: RingLog): (readonly Place[])[] {
  const { origin, along, across, length, width } = face;
  const columns = clamp(Math.ceil(length / cell), 6, mostCells[0]) + 1;
  const rows = clamp(Math.ceil(width / cell), 6, mostCells[1]) + 1;
  const values = new Array<number>(columns * rows);
  let [low, high] = [Infinity, -Infinity];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const [u, v] = [(column / (columns - 1)) * length, (row / (rows - 1)) * width];
      const value = ringField(
        [
          origin[0] + u * along[0] + v * across[0],
          origin[1] + u * along[1] + v * across[1],
          origin[2] + u * along[2] + v * across[2],
        ],
        log,
      );
      values[row * columns + column] = value;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  const every = Math.max(1, Math.ceil((high - low) / mostLines));
  const years: number[] = [];
  for (let year = Math.ceil(low / every) * every; year <= high; year += every) years.push(year);

  const found: (readonly Place[])[] = [];
  for (const { coordinates } of contours().size([columns, rows]).thresholds(years)(values))
    for (const ring of coordinates.flat()) {
      let line: Place[] = [];
      for (const [x = 0, y = 0] of [...ring, [0, 0]]) {
        // The library closes its areas along the outside of the grid: there the line ends at the face's edge.
        if (x > 0 && x < columns && y > 0 && y < rows)
          line.push([((x - 0.5) / (columns - 1)) * length, ((y - 0.5) / (rows - 1)) * width]);
        else {
          if (line.length > 1) found.push(simpler(line, log.ringWidth / 25));
          line = [];
        }
      }
    }
  return found;
}

/** The same as path data for SVG. */
export const grainPath = (face: FacePlacement, log: RingLog): string =>
  grainLines(face, log)
    .map((line) => `M${line.map((place) => place.map((number) => number.toFixed(1)).join(' ')).join('L')}`)
    .join('');
