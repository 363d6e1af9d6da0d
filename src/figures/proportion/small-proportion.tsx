/** The box from above, and what its inside is longer than a rectangle of the outside's ratio. */
import { lengthFromRatio } from '../../calc/proportion/proportion.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const ProportionSmall: SmallFigure = ({ values: v }) => {
  const sameShape = lengthFromRatio.compute({ r: v.outsideRatio, W: v.insideWidth });
  return (
    <SmallDrawing view={[0, 0, v.outsideLength, v.outsideWidth]}>
      <rect class="wood-end" width={v.outsideLength} height={v.outsideWidth} />
      <rect class="inside" x={v.wall} y={v.wall} width={v.insideLength} height={v.insideWidth} />
      <rect
        class="surplus"
        x={v.wall + sameShape}
        y={v.wall}
        width={v.insideLength - sameShape}
        height={v.insideWidth}
      />
    </SmallDrawing>
  );
};

export default ProportionSmall;
