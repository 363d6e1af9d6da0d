/** What comes out of the reader's board: slices, walls in a row, and the corners at which the figure goes on. */
import { slicesByResawing, thicknessForPair, trimSpare } from '../../../calc/board/stock.ts';
import {
  boardLengthForParts,
  matchedCorners,
  spareOnBoard,
  wallsInARow,
} from '../../../calc/board/strip-length.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';

export interface BoardResults {
  /** Walls, one over the other, that the thickness of the board gives. */
  readonly slicesOfBoard: number;
  /** Rough thickness that two walls from one board need, mm. */
  readonly pairThickness: number;
  /** Lengths of the walls in one row: all four, or those of one leaf; mm. */
  readonly wallsTogether: number;
  /** Length of board for them with cuts and spare, and what this board leaves to trim; mm. */
  readonly boardNeeded: number;
  readonly boardSpare: number;
  /** Corners round which the figure goes on, 0 to 4. */
  readonly cornersMatched: number;
}

export type BoardValues = Box & SizeResults & BoardResults;
type V = BoardValues;
const row = rowsOf<V>();

export const isPair = (v: Pick<Box, 'wallsFrom'>): boolean => v.wallsFrom === 'bookmatched';
/** By how much each end of an end wall is shorter than the box is wide: `box/design/joints` cuts it so. */
const insetOf = ({ joint, wall }: Box): number =>
  joint === 'butt' ? wall : joint === 'rabbet' ? wall / 2 : 0;

/** Cuts between the walls of one row, by the tilt of the blade. */
function cutsOf(v: Box, rows: number): { n: number; c: number } {
  const cuts = 4 / rows - 1;
  return v.joint.endsWith('mitre') ? { n: 0, c: cuts } : { n: cuts, c: 0 };
}
const rowOf = (v: V) => ({ P: v.wallsTogether, ...cutsOf(v, isPair(v) ? 2 : 1), k: v.kerf });

/** Corners whose two walls do not lie side by side: a strip too short is cut in halves, a half too short into walls. */
function unmatched(v: V): number {
  const half = boardLengthForParts.compute({
    P: wallsInARow.compute({ q: 1, L: v.outsideLength, W: v.outsideWidth, i: insetOf(v) }),
    ...cutsOf(v, 2),
    k: v.kerf,
    m: trimSpare,
  });
  if (half > v.boardLength + 1e-9) return 4;
  if (isPair(v)) return v.slicesOfBoard >= 2 ? 0 : 2;
  return v.boardSpare >= trimSpare - 1e-9 ? 1 : 2;
}

const resawn = { rule: 'resaw-stock' } as const;
const inARow = { kind: 'length', as: 'size', rule: 'board-length' } as const;

export const boardResults: ResultTable<keyof BoardResults, V> = {
  slicesOfBoard: row(slicesByResawing, (v) => ({ T: v.boardThickness, t: v.wall, p: v.planing, k: v.kerf }), {
    ...resawn,
    label: 'walls out of the thickness of the board',
    kind: 'count',
  }),
  pairThickness: row(thicknessForPair, (v) => ({ t: v.wall, p: v.planing, k: v.kerf }), {
    ...resawn,
    label: 'thickness for two walls',
    kind: 'length',
    as: 'size',
    round: 'up',
  }),
  wallsTogether: row(
    wallsInARow,
    (v) => ({ q: isPair(v) ? 1 : 2, L: v.outsideLength, W: v.outsideWidth, i: insetOf(v) }),
    { ...inARow, label: 'lengths of the walls in one row' },
  ),
  boardNeeded: row(boardLengthForParts, (v) => ({ ...rowOf(v), m: trimSpare }), {
    ...inARow,
    label: 'length of board for the walls, with cuts and spare',
    round: 'up',
  }),
  boardSpare: row(spareOnBoard, (v) => ({ B: v.boardLength, ...rowOf(v) }), {
    ...inARow,
    label: 'left of the board to trim',
    round: 'down',
  }),
  cornersMatched: row(matchedCorners, (v) => ({ u: unmatched(v) }), {
    label: 'corners at which the figure goes on',
    kind: 'count',
    rule: 'walk-round-order',
  }),
};
