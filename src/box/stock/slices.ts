/** Slices sawn off the thickness of boards. */
import type { Placed } from '../../calc/board/board-layout.ts';
import type { Design } from '../design/design.ts';
import type { Group } from './runs.ts';

/** One slice of a board, sawn off its thickness, with the parts on its face. */
export interface Slice {
  readonly board: number;
  /** Counted from one face of the board, from 0. */
  readonly place: number;
  /** Thickness of its parts, and as sawn with both faces still to plane. */
  readonly finished: number;
  readonly sawn: number;
  /** The second of a pair opened like a book: its figure mirrors the first's. */
  readonly mirrored: boolean;
  readonly placed: readonly Placed[];
}

/** Puts slices into boards, the first board with room first; a pair stays together in one board. */
export function intoBoards(
  laid: readonly { group: Group; faces: readonly (readonly Placed[])[][] }[],
  { boardThickness, planing, kerf }: Design['box'],
): Slice[] {
  /** Thickness used in each board, and slices in it. */
  const boards: { used: number; slices: number }[] = [];
  const units = laid.flatMap(({ group, faces }) => {
    const slice = (placed: readonly Placed[], mirrored: boolean) => ({ group, placed, mirrored });
    const [first = [], second = []] = faces;
    const sawn = group.thickness + 2 * Math.max(0, planing);
    // A board too thin for both gives no pair.
    const matched = 2 * sawn + Math.max(0, kerf) <= boardThickness + 1e-9;
    const pair = [first[0], second[0]].flatMap((placed, index) =>
      placed ? [slice(placed, matched && index === 1)] : [],
    );
    const rest = [...first.slice(1), ...second.slice(1)].map((placed) => [slice(placed, false)]);
    return [...(matched ? [pair] : pair.map((one) => [one])), ...rest].filter((unit) => unit.length > 0);
  });
  return units.flatMap((unit) => {
    const sawn = unit[0]!.group.thickness + 2 * Math.max(0, planing);
    const needed = unit.length * (sawn + Math.max(0, kerf));
    let board = boards.findIndex(({ used }) => used + needed - Math.max(0, kerf) <= boardThickness + 1e-9);
    if (board < 0) board = boards.push({ used: 0, slices: 0 }) - 1;
    const at = boards[board]!;
    const place = at.slices;
    at.used += needed;
    at.slices += unit.length;
    return unit.map(
      ({ group, placed, mirrored }, index): Slice => ({
        board,
        place: place + index,
        finished: group.thickness,
        sawn,
        mirrored,
        placed,
      }),
    );
  });
}
