/** Checks on the board the walls come from. Ranges are common practice. */
import type { Check } from '../../core/verdict.ts';
import { type BoardValues, isPair } from './results.ts';

const enough = { mm: [12, Number.POSITIVE_INFINITY], inch: [1 / 2, Number.POSITIVE_INFINITY] } as const;

export const boardChecks: readonly Check<BoardValues>[] = [
  {
    id: 'resaw-stock',
    rule: 'resaw-stock',
    label: 'walls out of the thickness of the board',
    kind: 'number',
    of: 'slicesOfBoard',
    usual: (v) => [isPair(v) ? 2 : 1, Number.POSITIVE_INFINITY],
    works: (v) => [isPair(v) ? 2 : 1, Number.POSITIVE_INFINITY],
    says: {
      low: 'The board is too thin: wall, saw cut and clean-up of every face are more than it has.',
      high: '',
      inside: 'Walls, saw cuts and clean-up of every face find room in the board.',
    },
  },
  {
    id: 'board-length',
    rule: 'board-length',
    label: 'left of the board to trim',
    kind: 'length',
    of: 'boardSpare',
    usual: enough,
    says: ({ boardSpare }) => ({
      low:
        boardSpare < 0
          ? 'The walls of one row and their saw cuts are longer than the board: the last one comes up short, or the row is cut up.'
          : 'Little is left for trimming: one crooked end, and the last wall is short.',
      high: '',
      inside: 'All walls of the row and their saw cuts come out of the board, with enough to trim both ends.',
    }),
  },
  {
    id: 'walk-round-order',
    rule: 'walk-round-order',
    label: 'corners at which the figure goes on',
    kind: 'number',
    of: 'cornersMatched',
    usual: [3, 4],
    says: {
      low: 'The row is cut up, so the figure breaks at more corners than it must.',
      high: '',
      inside: 'Neighbors on the board are neighbors on the box.',
    },
  },
];
