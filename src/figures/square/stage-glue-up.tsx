/** Four walls from above as they are glued, and the two diagonals that tell whether they stand square. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const StageGlueUp: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const [right, foot] = [length - wall, width - wall];
  return (
    <SmallDrawing view={[0, 0, length, width]}>
      <rect class="inside" width={length} height={width} />
      <path class="wood" d={`M0 0H${length}V${wall}H0ZM0 ${foot}H${length}V${width}H0Z`} />
      <path
        class="wood-end"
        d={`M0 ${wall}H${wall}V${foot}H0ZM${right} ${wall}H${length}V${foot}H${right}Z`}
      />
      <path class="curve" d={`M${wall} ${wall}L${right} ${foot}M${wall} ${foot}L${right} ${wall}`} />
    </SmallDrawing>
  );
};

export default StageGlueUp;
