/** Cutting bodies from the faces of a thing: where a cut meets a face, the thing has an edge, and it is drawn. */
import {
  type Body,
  clip,
  cross,
  dot,
  lengthOf,
  minus,
  type Polygon,
  touching,
  unit,
  type Vector,
  without,
} from './convex.ts';

/** A polygon from which a body was taken: where the two meet is an edge to draw. */
function bordered({ points, drawn }: Polygon, taken: Polygon): Polygon {
  const result = { points: [] as Vector[], drawn: [] as boolean[] };
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length]!;
    const length = lengthOf(minus(to, from));
    const shared = drawn[index] || length < touching ? undefined : overlapping(from, to, length, taken);
    result.points.push(from);
    if (!shared) {
      result.drawn.push(drawn[index]!);
      return;
    }
    const [start, end] = shared;
    const way = minus(to, from);
    const at = (place: number): Vector => [
      from[0] + (way[0] * place) / length,
      from[1] + (way[1] * place) / length,
      from[2] + (way[2] * place) / length,
    ];
    if (start > touching) {
      result.drawn.push(false);
      result.points.push(at(start));
    }
    result.drawn.push(true);
    if (end < length - touching) {
      result.points.push(at(end));
      result.drawn.push(false);
    }
  });
  return result;
}

/** From where to where an edge of a polygon lies on a line, measured along it. */
function overlapping(from: Vector, to: Vector, length: number, { points }: Polygon) {
  const way = unit(minus(to, from));
  for (let index = 0; index < points.length; index++) {
    const ends = [points[index]!, points[(index + 1) % points.length]!].map((end) => {
      const off = minus(end, from);
      const along = dot(off, way);
      return { along, aside: lengthOf(cross(off, way)) };
    });
    if (ends.some(({ aside }) => aside > 10 * touching)) continue;
    const places = ends.map(({ along }) => Math.min(length, Math.max(0, along)));
    const [start, end] = [Math.min(...places), Math.max(...places)];
    if (end - start > 10 * touching) return [start, end] as const;
  }
  return undefined;
}

/** What is left of faces when bodies are cut from the thing they belong to: the borders of the cuts are drawn. */
export const cutFrom = (polygons: readonly Polygon[], bodies: readonly Body[]): readonly Polygon[] =>
  bodies.reduce(
    (left, body) =>
      left.flatMap((polygon) => {
        const taken = clip(polygon, body);
        return taken ? without(polygon, body).map((one) => bordered(one, taken)) : [polygon];
      }),
    polygons,
  );
