/** Air, boards and slices. */
import type { Vector } from '../../../geometry/convex.ts';
import type { Solid } from '../../../geometry/solid.ts';
import { stockOf } from '../../stock/stock.ts';
import type { Planned } from '../step.ts';
import { blockOf, type Scene, type Thing } from './scene.ts';

export const air = ({ box }: Planned) => ({ dial: box.humidityToday });

/** More stand behind; three show how. */
const mostDrawn = 3;

/** Blocks of one kind standing on edge in a row, air between them. */
const onEdge = (solids: readonly Solid[], gap: number): Thing[] => {
  let y = 0;
  return solids.slice(0, mostDrawn).map((solid) => {
    const at: Vector = [0, y, 0];
    y += solid.block.y[1] + gap;
    return { solid, grain: 'x', at, marked: { sides: ['y-', 'y+'] } };
  });
};

export function boards(design: Planned): Scene {
  const { boardLength, boardWidth, boardThickness } = design.box;
  const count = Math.max(1, stockOf(design).boards);
  const board = blockOf(boardLength, boardThickness, boardWidth);
  return {
    shows: 'The board on edge, air at both faces.',
    things: onEdge(
      Array.from({ length: count }, () => board),
      4 * boardThickness,
    ),
  };
}

export function slices(design: Planned): Scene {
  const { boardLength, boardWidth, boardThickness } = design.box;
  const { slices: all } = stockOf(design);
  const own = all.filter(({ board }) => board === all[0]?.board);
  return {
    shows: 'The board sawn into slices, their faces marked.',
    things: onEdge(
      own.map(({ sawn }) => blockOf(boardLength, sawn, boardWidth)),
      1.5 * boardThickness,
    ),
  };
}
