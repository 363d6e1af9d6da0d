/**
 * How long a board must be for parts cut one after the other, and what it leaves to trim.
 *
 *   P = q (L + W − 2 i)              walls in one row: q = 2 for all four, q = 1 for each half of a pair
 *   S = P + n k + c √2 k + m         a square cut takes its kerf off the face, one at 45° takes √2 of it
 *   m = B − (P + n k + c √2 k)       what a board of length B leaves
 *   f = 4 − u                        corners round which the figure goes on
 *
 * Symbols: L, W outside length and width, i by how much each end of an end wall is shorter than that, k kerf, m spare
 * for the two ends, B length of the board; all mm. n square cuts between parts, c cuts at 45°, u corners whose two walls
 * did not lie side by side.
 * Held fixed: outer faces up, knots and checks are none. Two walls that meet at 45° have two cuts between them, but their
 * kerfs lie over each other on the outer face: it loses one.
 */
import { relation } from '../core/relation.ts';

const size = { unit: 'mm', range: [20, 2000] } as const;
const P = { name: 'lengths of the parts together', unit: 'mm', range: [20, 8000] } as const;
const k = { name: 'kerf', unit: 'mm', range: [0.2, 10] } as const;
const n = { name: 'square cuts between parts', unit: '1', range: [0, 20], whole: true } as const;
const c = { name: 'places between parts cut at 45°', unit: '1', range: [0, 20], whole: true } as const;

/** Lengths of the walls that lie in one row, mm. */
export const wallsInARow = relation({
  id: 'walls-in-a-row',
  title: 'Lengths of the walls in one row',
  result: { symbol: 'P', name: 'lengths together', unit: 'mm' },
  inputs: {
    q: { name: 'sides, and ends, in the row', unit: '1', range: [1, 2], whole: true },
    L: { ...size, name: 'outside length' },
    W: { ...size, name: 'outside width' },
    i: { name: 'by which an end wall is shorter at either end', unit: 'mm', range: [0, 50] },
  },
  // Two walls leave an inside.
  rangesGiven: ({ W }) => ({ i: [0, W / 2] }),
  expression: 'q * (L + W - 2 i)',
  compute: ({ q, L, W, i }) => q * (L + W - 2 * i),
  evidence: 'geometry',
  source: 'Each side is as long as the box; each end as the box is wide, less what stands behind the sides.',
});

/** Length of board for parts cut one after the other, mm. */
export const boardLengthForParts = relation({
  id: 'board-length-for-parts',
  title: 'Length of board for parts in a row',
  result: { symbol: 'S', name: 'length of board', unit: 'mm' },
  inputs: {
    P,
    n,
    c,
    k,
    m: { name: 'spare for trimming both ends', unit: 'mm', range: [0, 100] },
  },
  expression: 'P + n * k + c * sqrt(2) * k + m',
  compute: ({ P, n, c, k, m }) => P + n * k + c * Math.SQRT2 * k + m,
  evidence: 'geometry',
  source: 'Every cut eats its kerf; a blade at 45° meets the face at a slant and eats √2 of it.',
});

/** What a board leaves for trimming its ends, mm; below zero the last part comes up short. */
export const spareOnBoard = relation({
  id: 'spare-on-board',
  title: 'What the board leaves to trim',
  result: { symbol: 'm', name: 'spare for trimming both ends', unit: 'mm' },
  inputs: { B: { name: 'length of the board', unit: 'mm', range: [20, 8000] }, P, n, c, k },
  expression: 'B - (P + n * k + c * sqrt(2) * k)',
  compute: ({ B, P, n, c, k }) => B - (P + n * k + c * Math.SQRT2 * k),
  evidence: 'geometry',
  source: 'The length of the board, less its parts and its saw cuts.',
});

/** Corners round which the figure goes on. */
export const matchedCorners = relation({
  id: 'matched-corners',
  title: 'Corners at which the figure goes on',
  result: { symbol: 'f', name: 'matched corners', unit: '1' },
  inputs: {
    u: { name: 'corners whose walls did not lie together', unit: '1', range: [0, 4], whole: true },
  },
  expression: '4 - u',
  compute: ({ u }) => 4 - u,
  evidence: 'geometry',
  source: 'Four corners, less those where a strip begins or ends.',
});
