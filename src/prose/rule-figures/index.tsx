/** The figure of each rule that has one. */
import { bottomLidAndFinish } from './bottom-lid-and-finish.tsx';
import { cuttingUp } from './cutting-up.tsx';
import type { FigureTable } from './figure-of.tsx';
import { glueUp } from './glue-up.tsx';
import { jointsAndGrooves } from './joints-and-grooves.tsx';
import { sizeAndShape } from './size-and-shape.tsx';
import { surface } from './surface.tsx';
import { woodAndStock } from './wood-and-stock.tsx';

export const ruleFigures: FigureTable = {
  ...sizeAndShape,
  ...woodAndStock,
  ...cuttingUp,
  ...jointsAndGrooves,
  ...bottomLidAndFinish,
  ...surface,
  ...glueUp,
};
