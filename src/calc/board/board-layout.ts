/**
 * How parts lie on boards: rows along the grain, one after the other across the width, slice after slice, board after
 * board. Parts of one run keep their order along the board, with nothing but a saw cut between neighbors.
 *
 * Rows are what a saw bench makes: rip a row to width, then crosscut the parts. A tighter nesting would save wood on
 * paper and cost it again at the saw.
 */

/** A part to cut, rough size in mm: length along the grain, width across it. */
export interface Piece {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  /** Pieces with the same run are cut from one strip, in the order given. */
  readonly run?: string;
}

export interface Board {
  readonly length: number;
  readonly width: number;
  /** Slices that resawing gives from its thickness, at least 1. */
  readonly slices: number;
  readonly kerf: number;
}

export interface Placed {
  readonly piece: Piece;
  readonly board: number;
  readonly slice: number;
  /** Lower left corner on the face of the slice, mm. */
  readonly x: number;
  readonly y: number;
}

export interface Layout {
  readonly placed: readonly Placed[];
  readonly boards: number;
  /** Share of the faces used, 0 to 1. */
  readonly used: number;
  /** Pieces that fit on no board, with what is missing. */
  readonly short: readonly { readonly piece: Piece; readonly length: number; readonly width: number }[];
}

interface Row {
  readonly pieces: readonly Piece[];
  readonly length: number;
  readonly width: number;
}

const rowOf = (pieces: readonly Piece[], kerf: number): Row => ({
  pieces,
  length: pieces.reduce((sum, { length }) => sum + length, 0) + kerf * (pieces.length - 1),
  width: Math.max(...pieces.map(({ width }) => width)),
});

/** Cuts a run into rows that fit the length, as few as possible, in order. */
function rowsOf(pieces: readonly Piece[], { length, kerf }: Board): Row[] {
  const rows: Row[] = [];
  let current: Piece[] = [];
  for (const piece of pieces) {
    if (current.length > 0 && rowOf([...current, piece], kerf).length > length + 1e-9) {
      rows.push(rowOf(current, kerf));
      current = [];
    }
    current.push(piece);
  }
  return current.length > 0 ? [...rows, rowOf(current, kerf)] : rows;
}

/**
 * Lays all pieces on as many boards as they need.
 * @param pieces rough sizes, positive; runs first keep their order, loose pieces fill the rows that have room
 * @param most boards at most, so that an absurd input ends
 */
export function layOut(pieces: readonly Piece[], board: Board, most = 50): Layout {
  const short = pieces
    .filter(({ length, width }) => length > board.length + 1e-9 || width > board.width + 1e-9)
    .map((piece) => ({
      piece,
      length: Math.max(0, piece.length - board.length),
      width: Math.max(0, piece.width - board.width),
    }));
  const possible = pieces.filter((piece) => !short.some((one) => one.piece === piece));
  const runs = [...new Set(possible.flatMap(({ run }) => run ?? []))];
  const rows = runs.flatMap((run) => {
    const parts = possible.filter((piece) => piece.run === run);
    return rowsOf(parts, board);
  });
  const loose = possible.filter(({ run }) => run === undefined).sort((a, b) => b.width - a.width);
  // A loose piece goes to the right of the first row that has room for it, so that no strip is ripped for it alone.
  const filled = rows.map(({ pieces: parts }) => [...parts]);
  for (const piece of loose) {
    const home = filled.find((parts) => {
      const row = rowOf(parts, board.kerf);
      return piece.width <= row.width + 1e-9 && row.length + board.kerf + piece.length <= board.length + 1e-9;
    });
    if (home) home.push(piece);
    else filled.push([piece]);
  }

  const placed: Placed[] = [];
  /** How far the rows of each slice reach across its width. */
  const reach: number[] = [];
  for (const row of filled.map((parts) => rowOf(parts, board.kerf))) {
    let slice = reach.findIndex((used) => used + row.width <= board.width + 1e-9);
    if (slice < 0) {
      slice = reach.length;
      reach.push(0);
    }
    if (slice >= most * board.slices) break;
    let x = 0;
    for (const piece of row.pieces) {
      placed.push({
        piece,
        board: Math.floor(slice / board.slices),
        slice: slice % board.slices,
        x,
        y: reach[slice]!,
      });
      x += piece.length + board.kerf;
    }
    reach[slice]! += row.width + board.kerf;
  }
  const area = placed.reduce((sum, { piece }) => sum + piece.length * piece.width, 0);
  const boards = Math.ceil(reach.length / board.slices);
  return {
    placed,
    boards,
    used: boards ? area / (boards * board.slices * board.length * board.width) : 0,
    short,
  };
}
