/** The bottom cut through, and under it how it swings after a tap: faster where it is thicker. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { fadingSwing } from './TapRing.tsx';

const BottomYouCanHear: SmallFigure = ({ values: v }) => {
  const { insideLength: length, bottomThickness: thick } = v;
  const swing = length / 5;
  return (
    <SmallDrawing view={[0, 0, length, thick + 2.6 * swing]}>
      <rect class="wood" x={-length} width={3 * length} height={thick} />
      <path class="axis" d={`M0 ${thick + 1.5 * swing}h${length}`} />
      <path class="curve" d={fadingSwing(thick + 1.5 * swing, v.tapPitch, swing, length, 4)} />
    </SmallDrawing>
  );
};

export default BottomYouCanHear;
