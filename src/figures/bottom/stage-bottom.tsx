/** One edge of the bottom in its groove, enlarged: what holds it, and the gap in which it may swell. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const StageBottom: SmallFigure = ({ values: v }) => {
  const { wall, grooveDepth: deep, bottomGap: gap, bottomLip: lip, bottomTongue: tongue } = v;
  const body = Math.min(v.bottomThickness, lip + tongue);
  const above = 1.2 * lip;
  const height = above + tongue + lip;
  const width = 1.3 * height;
  /** Upper and lower side of the groove, and the face of the wall that looks inward. */
  const [top, foot, face] = [above, above + tongue, wall];
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <path class="wood-end" d={`M0 0H${face}V${top}H${face - deep}V${foot}H${face}V${height}H0Z`} />
      <path
        class="wood"
        d={`M${face - deep + gap} ${top}H${2 * width}V${top + body}H${face}V${foot}H${face - deep + gap}Z`}
      />
    </SmallDrawing>
  );
};

export default StageBottom;
