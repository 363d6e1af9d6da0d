/** The glass over the board: its first slice, and what is cut from it. */
import { stockOf } from '../../../box/stock/stock.ts';
import type { Vector } from '../../../geometry/convex.ts';
import type { Cut } from '../SectionPicture.tsx';
import { flat, type Pane, type Planned, rectangle } from './pane.ts';

export function boardPane(design: Planned): Pane {
  const { boardLength: L, boardWidth: W } = design.box;
  const [slice] = stockOf(design).slices;
  return {
    caption: 'first slice',
    window: [0, 0, L, W],
    cuts: (slice?.placed ?? []).flatMap(({ piece, x, y }): Cut[] => {
      const part = design.parts.find(({ name }) => name === piece.name);
      if (!part) return [];
      // Looked at from its face, never from its end.
      const normal: Vector = part.grain === 'x' ? [0, 0, 1] : [1, 0, 0];
      return [{ name: part, normal, polygons: [flat(x, W - y - piece.width, x + piece.length, W - y)] }];
    }),
    measures: [
      { from: [0, 0], to: [0, W], away: -12, value: W },
      { from: [0, W], to: [L, W], away: 12, value: L },
    ],
    dashed: [rectangle(0, -W, L, 0)],
  };
}
