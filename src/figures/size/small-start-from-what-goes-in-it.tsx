/** The contents from above, with the room around them and the walls. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const StartSmall: SmallFigure = ({ values: v }) => (
  <SmallDrawing view={[0, 0, v.outsideLength, v.outsideWidth]}>
    <rect class="wood" width={v.outsideLength} height={v.outsideWidth} />
    <rect class="inside" x={v.wall} y={v.wall} width={v.insideLength} height={v.insideWidth} />
    <rect
      class="thing"
      x={v.wall + (v.insideLength - v.contentsLength) / 2}
      y={v.wall + (v.insideWidth - v.contentsWidth) / 2}
      width={v.contentsLength}
      height={v.contentsWidth}
    />
  </SmallDrawing>
);

export default StartSmall;
