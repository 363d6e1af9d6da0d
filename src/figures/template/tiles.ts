/**
 * Sheets of paper for a drawing larger than one: equal windows that overlap, side by side and one above the other.
 * One tile fits within the margins of A4 and of US Letter alike: 210 mm and 215.9 mm wide, 297 mm and 279.4 mm high.
 */

/** Widest and highest window on the drawing, mm, and how much neighbors share. */
export const tile = { width: 180, height: 200, overlap: 12 } as const;

/** A window on the drawing, mm from its lower left corner. */
export interface Window {
  readonly x: readonly [from: number, to: number];
  readonly y: readonly [from: number, to: number];
}

/** Equal stretches of at most `most` that cover a length, each sharing `overlap` with the next. */
export function stretches(length: number, most: number, overlap: number): (readonly [number, number])[] {
  if (!(length > 0 && most > overlap)) return [];
  const count = length <= most ? 1 : Math.ceil((length - overlap) / (most - overlap));
  const size = (length + (count - 1) * overlap) / count;
  return Array.from({ length: count }, (_, index) => {
    const from = index * (size - overlap);
    return [from, from + size] as const;
  });
}

/** The windows that cover a part, from left to right, from the lower edge up. */
export const tilesOf = (length: number, height: number): Window[] =>
  stretches(height, tile.height, tile.overlap).flatMap((y) =>
    stretches(length, tile.width, tile.overlap).map((x) => ({ x, y })),
  );
