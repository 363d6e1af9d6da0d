/** What a board is too short, too narrow or too thin for, by how much, and what mends it. */
import type { Layout } from '../../calc/board/board-layout.ts';
import type { Design } from '../design/design.ts';
import { both } from '../design/refusal.ts';
import type { Box } from '../subjects/inputs.ts';
import type { Group } from './runs.ts';

export interface Shortage {
  /** The size of the board that is short, and by how much, mm. */
  readonly of: 'length' | 'width' | 'thickness';
  readonly by: number;
  readonly what: string;
  readonly fix: string;
  readonly field: keyof Box;
  /** A value of that field with which nothing is short. */
  readonly to: number;
}

export function shortagesOf(
  { box, parts }: Design,
  groups: readonly Group[],
  short: Layout['short'],
): Shortage[] {
  const label = (name: string) => parts.find((part) => part.name === name)?.label ?? name;
  const planing = Math.max(0, box.planing);
  const thick = groups.flatMap(({ thickness, faces }): Shortage[] => {
    const sawn = thickness + 2 * planing;
    const matched = faces.length > 1;
    const needed = matched ? 2 * sawn + Math.max(0, box.kerf) : sawn;
    if (needed <= box.boardThickness + 1e-9) return [];
    return [
      {
        of: 'thickness',
        by: needed - box.boardThickness,
        what: matched
          ? `Two matching slices of ${both(thickness)} need a board ${both(needed)} thick: yours is short by ${both(needed - box.boardThickness)}.`
          : `Parts of ${both(thickness)} need a board ${both(needed)} thick before planing: yours is short by ${both(needed - box.boardThickness)}.`,
        fix: matched ? 'Take a thicker board, or cut the walls from one strip.' : 'Take a thicker board.',
        field: 'boardThickness',
        to: needed,
      },
    ];
  });
  const flat = short.flatMap(({ piece, length, width }): Shortage[] => [
    ...(length > 0
      ? [
          {
            of: 'length' as const,
            by: length,
            what: `The board is shorter than the ${label(piece.name)} by ${both(length)}.`,
            fix: `Take a board at least ${both(piece.length)} long.`,
            field: 'boardLength' as const,
            to: piece.length,
          },
        ]
      : []),
    ...(width > 0
      ? [
          {
            of: 'width' as const,
            by: width,
            what: `The board is narrower than the ${label(piece.name)} by ${both(width)}.`,
            fix: `Take a board ${both(piece.width)} wide, or glue the part up from narrower pieces.`,
            field: 'boardWidth' as const,
            to: piece.width,
          },
        ]
      : []),
  ]);
  const runs = groups.flatMap(({ cutUp }): Shortage[] =>
    cutUp === undefined
      ? []
      : [
          {
            of: 'length',
            by: cutUp - box.boardLength,
            what: `Walls that follow each other around the box need ${both(cutUp)} of board: yours is short by ${both(cutUp - box.boardLength)}, so they are cut in several runs.`,
            fix: 'Take a longer board, or let the grain pattern break at a corner.',
            field: 'boardLength',
            to: cutUp,
          },
        ],
  );
  return [...thick, ...flat, ...runs];
}
