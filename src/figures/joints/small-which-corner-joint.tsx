/** The ends of three walls of the example: a butt joint, a miter and tails, with the faces that glue holds best. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { sizeOfEnd, WallEnd } from './WallEnd.tsx';

const WhichCornerJointSmall: SmallFigure = ({ values: v }) => {
  const [wide, high] = sizeOfEnd(v.wall, v.jointedHeight);
  const next = wide + v.wall / 2;
  return (
    <SmallDrawing view={[0, 0, 2 * next + wide, high]}>
      {(['butt', 'mitre', 'dovetail'] as const).map((joint, i) => (
        <WallEnd key={joint} values={{ ...v, joint }} x={i * next} foot={high} scale={1} told />
      ))}
    </SmallDrawing>
  );
};

export default WhichCornerJointSmall;
