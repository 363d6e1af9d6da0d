/** The small drawing of each stage of the work that has rules: that of the lesson on it, or one of its own. */
import StageStock from '../figures/board/stage-stock.tsx';
import StageBottom from '../figures/bottom/stage-bottom.tsx';
import StageContents from '../figures/box/stage-contents.tsx';
import type { SmallFigure } from '../figures/parts/SmallDrawing.tsx';
import StageGlueUp from '../figures/square/stage-glue-up.tsx';
import type { stages } from './rule-terms.ts';
import { smallDrawings } from './small-drawings.ts';

export const stageDrawings: Readonly<Partial<Record<(typeof stages)[number], SmallFigure | undefined>>> = {
  'contents and size': StageContents,
  proportion: smallDrawings.proportion,
  'wood and air': smallDrawings['air-and-wood'],
  stock: StageStock,
  walls: smallDrawings['wall-thickness'],
  joints: smallDrawings['joint-spacing'],
  grooves: smallDrawings['groove-margins'],
  bottom: StageBottom,
  lid: smallDrawings['wood-movement'],
  'glue-up': StageGlueUp,
  'surface and finish': smallDrawings['what-a-finish-does'],
  care: smallDrawings['ten-years'],
};
