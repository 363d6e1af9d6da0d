/** Moves of stiff bodies. */
import { dot, minus, type Vector } from './convex.ts';

/** Where a point of the body goes. */
export type Move = (point: Vector) => Vector;

/** The move that undoes another. */
export function undone(move: Move): Move {
  const start = move([0, 0, 0]);
  const [x, y, z] = [move([1, 0, 0]), move([0, 1, 0]), move([0, 0, 1])].map((end) => minus(end, start)) as [
    Vector,
    Vector,
    Vector,
  ];
  return (point) => {
    const off = minus(point, start);
    return [dot(off, x), dot(off, y), dot(off, z)];
  };
}

/** Which way a direction of the body looks once it is moved. */
export const turnedBy = (move: Move | undefined, way: Vector): Vector =>
  move ? minus(move(way), move([0, 0, 0])) : way;
