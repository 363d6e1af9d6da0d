/**
 * The boards a box is cut from: which parts share a thickness, how they lie on slices resawn from the board, which
 * slices fit into one board, where the grain flows round a corner, and what is short.
 *
 * Walls cut from one run share its spare: (k + S/2) + … as in `calc/board/strip-length.ts`. All lengths in mm.
 */
import { layOut, type Placed } from '../../calc/board/board-layout.ts';
import { shortestMachineLength } from '../../calc/board/stock.ts';
import type { Design } from '../design/design.ts';
import type { Part, PartName, WallName } from '../design/part.ts';
import { type Group, groupsOf, isFromOffcuts, sharings, wallRuns } from './runs.ts';
import { type Shortage, shortagesOf } from './shortages.ts';
import { intoBoards, type Slice } from './slices.ts';

/** A row of parts that stays one piece of wood until its machine work is done. */
export interface Joined {
  readonly parts: readonly PartName[];
  readonly length: number;
  /** Whether it is long enough for a machine by itself. */
  readonly safe: boolean;
}

export interface Stock {
  readonly boards: number;
  readonly slices: readonly Slice[];
  /** Share of the slices' faces that becomes parts, 0 to 1. */
  readonly used: number;
  /** The four corners in walk-round order, and whether the figure goes on round each. */
  readonly corners: readonly { readonly between: readonly [WallName, WallName]; readonly flows: boolean }[];
  /** Rows with a part too short for a machine on its own. */
  readonly joined: readonly Joined[];
  readonly shortages: readonly Shortage[];
  /** Parts that are bought as plywood, and those so small that they come from what is left. */
  readonly plywood: readonly Part[];
  readonly offcuts: readonly Part[];
}

const walk = ['front', 'right', 'back', 'left'] as const;

/** How a design is cut from its boards, with as few as possible; nothing to cut gives no boards. */
export function stockOf(design: Design): Stock {
  const { box, parts } = design;
  const solid = parts.filter(({ material }) => material === 'solid');
  const cut = solid.filter((part) => !isFromOffcuts(part));
  const found = sharings(cut)
    .map((home) => shared(design, groupsOf(cut, box, home)))
    // The sort keeps the order of equals: among equals the one that planes least away.
    .sort((a, b) => a.shortages.length - b.shortages.length || a.boards - b.boards)[0]!;
  return {
    ...found,
    corners: walk.map((from, index) => {
      const to = walk[(index + 1) % walk.length]!;
      return { between: [from, to], flows: flowsRound(found.slices, from, to) };
    }),
    joined: found.slices.flatMap(({ placed }) => joinedRows(placed, Math.max(0, box.kerf))),
    plywood: parts.filter(({ material }) => material === 'plywood'),
    offcuts: solid.filter(isFromOffcuts),
  };
}

/** One way to share slices, laid out. */
function shared(design: Design, groups: readonly Group[]) {
  const { box } = design;
  const board = { length: box.boardLength, width: box.boardWidth, slices: 1, kerf: Math.max(0, box.kerf) };
  const laid = groups.map((group) => ({
    group,
    layouts: group.faces.map((pieces) => layOut(pieces, board)),
  }));
  const slices = intoBoards(
    laid.map(({ group, layouts }) => ({
      group,
      faces: layouts.map(({ placed, boards }) =>
        Array.from({ length: boards }, (_, one) => placed.filter((piece) => piece.board === one)),
      ),
    })),
    box,
  );
  const area = slices.reduce(
    (sum, { placed }) => sum + placed.reduce((all, { piece }) => all + piece.length * piece.width, 0),
    0,
  );
  const face = board.length * board.width;
  const short = laid.flatMap(({ layouts }) => layouts.flatMap((layout) => layout.short));
  return {
    slices,
    boards: slices.reduce((most, slice) => Math.max(most, slice.board + 1), 0),
    used: slices.length > 0 && face > 0 ? area / (slices.length * face) : 0,
    shortages: shortagesOf(design, groups, short),
  };
}

/** Whether two walls meet where they met in the board: one cut apart in a run, or at the ends of a pair opened like a book. */
function flowsRound(slices: readonly Slice[], from: WallName, to: WallName): boolean {
  const find = (wall: WallName) =>
    slices.flatMap((slice) => {
      const index = slice.placed.findIndex(({ piece }) => piece.name === wall);
      return index < 0 ? [] : [{ slice, index, placed: slice.placed[index]! }];
    })[0];
  const [one, other] = [find(from), find(to)];
  if (!one || !other) return false;
  if (one.slice === other.slice)
    return one.placed.piece.run === other.placed.piece.run && Math.abs(one.index - other.index) === 1;
  const pair = one.slice.board === other.slice.board && one.slice.mirrored !== other.slice.mirrored;
  const whole = [one, other].every(({ placed }) => wallRuns.pair.some((name) => name === placed.piece.run));
  return pair && whole;
}

function joinedRows(placed: readonly Placed[], kerf: number): Joined[] {
  return [...new Set(placed.map(({ y }) => y))]
    .map((y) => placed.filter((one) => one.y === y))
    .filter((row) => row.some(({ piece }) => piece.length < shortestMachineLength))
    .map((row) => {
      const length = row.reduce((sum, { piece }) => sum + piece.length, 0) + kerf * (row.length - 1);
      return {
        parts: row.map(({ piece }) => piece.name as PartName),
        length,
        safe: length >= shortestMachineLength,
      };
    });
}
