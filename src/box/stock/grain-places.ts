/**
 * Where each part lay in the log, from its place on the boards: what makes the figure on the faces follow from geometry.
 *
 * A board's own axes: X along its length, Y across its width, Z through its thickness. The log's: x along it, y and z
 * across it from the pith (`calc/board/rings.ts`). The board's rings meet its wide face at the box's ring angle.
 *
 * Walls cut from one strip stand with X in the direction in which one walks round the box (front, right, back, left)
 * and the low Z outward. The second slice of a pair opened like a book shows its other face, so X runs against the walk
 * there; with that the figure meets at all four corners.
 */

import type { LogPoint } from '../../calc/board/rings.ts';
import { trimSpare } from '../../calc/board/stock.ts';
import type { Point } from '../../geometry/solid.ts';
import { practice } from '../core/practice.ts';
import type { Design } from '../design/design.ts';
import type { Part, Piece } from '../design/part.ts';
import type { Stock } from './stock.ts';

/** From a place in the finished box to a place in the log, mm. */
export type ToLog = (point: Point) => LogPoint;

/** Distance of the board's middle from the pith: at least this, and clear of the pith. Ours. */
const fromPith = 100;
/** Later boards come from further along the same log. Ours. */
const boardStep = 1000;

/** The way along each wall in walk-round order. */
const walk: Readonly<Record<string, (point: Point) => number>> = {
  front: ({ y }) => y,
  right: ({ x }) => x,
  back: ({ y }) => -y,
  left: ({ x }) => -x,
};
/** How far inward from the wall's outer face. */
const inward: Readonly<Record<string, (point: Point) => number>> = {
  front: ({ x }) => x,
  right: ({ y }) => -y,
  back: ({ x }) => -x,
  left: ({ y }) => y,
};

/** Where a piece of a part lay; `undefined` for what is not cut from the boards, and for a liner or a pull. */
export function toLog(design: Design, stock: Stock, part: Part, piece: Piece): ToLog | undefined {
  const { box, saw } = design;
  const slice = stock.slices.find(({ placed }) => placed.some((one) => one.piece.name === part.name));
  const at = slice?.placed.findIndex((one) => one.piece.name === part.name) ?? -1;
  const placed = slice?.placed[at];
  if (!slice || !placed) return undefined;
  const row = slice.placed.filter(({ piece: { run } }) => run !== undefined && run === placed.piece.run);
  // Half the spare is trimmed from the first part of a run, before it starts.
  const trimmed =
    row.length > 0
      ? row[0] === placed
        ? trimSpare / 2
        : 0
      : (placed.piece.length - part.finished.length) / 2;
  const x0 = slice.board * boardStep + placed.x + trimmed;
  // Walls are ripped to one height with half the spare below; a lowered front loses wood above only.
  const y0 = placed.y + practice.extraWidth / 2;
  // Slices are counted downward, so that the first of a pair lies above the second.
  const top =
    box.boardThickness - slice.place * (slice.sawn + Math.max(0, box.kerf)) - Math.max(0, box.planing);
  const angle = (box.ringAngle * Math.PI) / 180;
  const reach = Math.max(fromPith, box.boardWidth * 0.75, box.boardThickness);
  const log = (x: number, y: number, z: number): LogPoint => [
    x,
    reach * Math.sin(angle) + y - box.boardWidth / 2,
    reach * Math.cos(angle) + z - box.boardThickness / 2,
  ];
  const wall = part.name.replace(/^lid-/, '');
  const along = walk[wall];
  const deep = inward[wall];
  if (along && deep) {
    const { block } = part.pieces[0]!;
    const corners = [0, 1].map((end) => ({ x: block.x[end]!, y: block.y[end]!, z: block.z[0] }));
    const [start, stop] = [Math.min(...corners.map(along)), Math.max(...corners.map(along))];
    const outer = Math.min(...corners.map(deep));
    // Above the saw line the wood lay higher by the kerf.
    const lost = piece.opens && saw ? saw.to - saw.from : 0;
    return (point) =>
      log(
        x0 + (slice.mirrored ? stop - along(point) : along(point) - start),
        y0 + point.z - block.z[0] + lost,
        slice.mirrored ? top - (deep(point) - outer) : top - slice.finished + (deep(point) - outer),
      );
  }
  if (part.name !== 'lid' && part.name !== 'bottom') return undefined;
  const { x, y, z } = piece.block;
  return (point) => log(x0 + point.x - x[0], y0 + point.y - y[0], top - (z[1] - point.z));
}
