/** The end of a wall of the example as a corner of tails: the faces that glue holds best are marked. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { sizeOfEnd, WallEnd } from './WallEnd.tsx';

const WhichCornerJointSmall: SmallFigure = ({ values: v }) => {
  const [wide, high] = sizeOfEnd(v.wall, v.jointedHeight);
  return (
    <SmallDrawing view={[0, 0, Math.max(wide, high * 1.1), high]}>
      <WallEnd values={{ ...v, joint: 'dovetail' }} x={0} foot={high} scale={1} told />
    </SmallDrawing>
  );
};

export default WhichCornerJointSmall;
