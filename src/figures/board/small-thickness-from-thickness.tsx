/** The end of the board, sawn into as many walls as its thickness gives. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { layerClass, layersOf } from './layers.ts';

/** Of the board's width, this many thicknesses are shown. */
const shown = 1.5;

const ThicknessFromThicknessSmall: SmallFigure = ({ values: v }) => {
  const thickness = v.boardThickness;
  const count = Number.isFinite(v.slicesOfBoard) ? v.slicesOfBoard : 0;
  return (
    <SmallDrawing view={[0, 0, thickness * shown, thickness]}>
      {layersOf(count, { ...v, thickness }).map(({ kind, from, to }) => (
        <rect
          key={from}
          {...layerClass[kind]}
          y={thickness - to}
          width={thickness * shown}
          height={to - from}
        />
      ))}
    </SmallDrawing>
  );
};

export default ThicknessFromThicknessSmall;
