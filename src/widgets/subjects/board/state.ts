/** The board that the labs of one page turn in one log, and the drying it goes through. Not part of the box, and not kept. */
import { computed, signal } from '@preact/signals';
import { type LogPiece, type Shrinkages, shrinkagesOf } from '../../../calc/board/log-map.ts';
import { type LogShape, shapeAfter } from '../../../calc/board/log-shape.ts';
import { reachOf } from '../../../calc/board/rings.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import type { Wood } from '../../../calc/core/wood.ts';
import { logRadius } from '../../../figures/board/LogEnd.tsx';

/** The log of these labs. */
export { figureLog as log } from '../../../figures/board/figure-log.ts';

export const piece = signal<LogPiece>({ center: [15, 70], width: 100, thickness: 20, turn: 0 });
/** Moisture of the wood before and after, %. */
export const moisture = signal({ from: 14, to: 6 });

export const place = (part: Partial<LogPiece>) => {
  piece.value = { ...piece.value, ...part };
};

const outside = computed<Refused | undefined>(() =>
  reachOf(piece.value) > logRadius
    ? {
        refused: 'Part of this piece lies outside the log. Move it toward the pith, or make it smaller.',
      }
    : undefined,
);
// The pith is in the way at any moisture and in any wood: asked here without either.
const still = computed(() => shapeAfter(piece.value, { radial: 0, tangential: 0 }, 2));

/** Why there can be no such board, if there cannot. */
export const impossible = computed<Refused | undefined>(
  () => outside.value ?? (isRefused(still.value) ? still.value : undefined),
);

/** The shrinkages of a wood in this drying. */
export const shrinkagesHere = (wood: Wood | undefined): Shrinkages | Refused =>
  wood
    ? shrinkagesOf(wood, moisture.value.from, moisture.value.to)
    : { refused: 'The wood of your box is not in the tables here. Choose another.' };

/** The shape of the board after this drying. */
export function dried(wood: Wood | undefined): { shape: LogShape } | Refused {
  if (impossible.value) return impossible.value;
  const shrinkages = shrinkagesHere(wood);
  if (isRefused(shrinkages)) return shrinkages;
  const shape = shapeAfter(piece.value, shrinkages, 24);
  return isRefused(shape) ? shape : { shape };
}
