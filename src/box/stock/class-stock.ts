/**
 * What a whole class cuts its boxes from: the strips of one box, as its own layout has them, laid side by side on as few
 * boards as they need. All lengths in mm.
 */
import { layOut } from '../../calc/board/board-layout.ts';
import type { Design } from '../design/design.ts';
import type { Part } from '../design/part.ts';
import type { Shortage } from './shortages.ts';
import { intoBoards } from './slices.ts';
import { stockOf } from './stock.ts';

export interface ClassStock {
  /** Boxes to cut for, spare ones among them. */
  readonly boxes: number;
  /** Boards of the size in the design, shared by the class; and those of one box cut for itself. */
  readonly boards: number;
  readonly boardsOfOne: number;
  /** All boards end to end. */
  readonly length: number;
  /** The strips of one box end to end, with the saw cuts between its parts and the spare at the ends of a run. */
  readonly stripsOfOne: number;
  /** Saw cuts between the parts of one box, and what they take in length. */
  readonly cutsOfOne: number;
  readonly sawnOfOne: number;
  /** Whether boxes share boards: slices that match stay with their box. */
  readonly shared: boolean;
  /** Panels of plywood, for all boxes. */
  readonly plywood: readonly { readonly part: Part; readonly count: number }[];
  readonly shortages: readonly Shortage[];
}

/** A strip to be ripped and cut across: what lies in one row of a slice. */
interface Strip {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly parts: number;
}

/**
 * @param learners whole number, 1 or more
 * @param spare further boxes, percent of the learners; rounded up to whole boxes
 */
export function classStock(design: Design, learners: number, spare: number): ClassStock {
  const { box } = design;
  const kerf = Math.max(0, box.kerf);
  const stock = stockOf(design);
  // Twelve learners and 25 % are 15 boxes, whatever the last bit of the product says.
  const boxes = Math.ceil(learners * (1 + spare / 100) - 1e-9);
  const strips = stock.slices.flatMap(({ placed, finished }): Strip[] =>
    [...new Set(placed.map(({ y }) => y))].map((y) => {
      const row = placed.filter((one) => one.y === y);
      return {
        length: row.reduce((sum, { piece }) => sum + piece.length, 0) + kerf * (row.length - 1),
        width: Math.max(...row.map(({ piece }) => piece.width)),
        thickness: finished,
        parts: row.length,
      };
    }),
  );
  const cuts = strips.reduce((sum, { parts }) => sum + parts - 1, 0);
  const alone = boxes * stock.boards;
  const shared = !stock.slices.some(({ mirrored }) => mirrored);
  const boards = shared ? Math.min(alone, boardsFor(strips, boxes, design)) : alone;
  return {
    boxes,
    boards,
    boardsOfOne: stock.boards,
    length: boards * box.boardLength,
    stripsOfOne: strips.reduce((sum, { length }) => sum + length, 0),
    cutsOfOne: cuts,
    sawnOfOne: cuts * kerf,
    shared,
    plywood: stock.plywood.map((part) => ({ part, count: part.count * boxes })),
    shortages: stock.shortages,
  };
}

/** Boards for the strips of so many boxes: strips of one thickness share slices, and slices share boards. */
function boardsFor(strips: readonly Strip[], boxes: number, { box }: Design): number {
  const face = { length: box.boardLength, width: box.boardWidth, slices: 1, kerf: Math.max(0, box.kerf) };
  const laid = [...new Set(strips.map(({ thickness }) => thickness))].map((thickness) => {
    const pieces = strips
      .filter((strip) => strip.thickness === thickness)
      .flatMap(({ length, width }) =>
        Array.from({ length: boxes }, () => ({ name: 'strip', length, width })),
      );
    const { placed, boards: slices } = layOut(pieces, face, pieces.length);
    return {
      group: { thickness, faces: [], cutUp: undefined },
      faces: [Array.from({ length: slices }, (_, at) => placed.filter(({ board }) => board === at))],
    };
  });
  return intoBoards(laid, box).reduce((most, { board }) => Math.max(most, board + 1), 0);
}
