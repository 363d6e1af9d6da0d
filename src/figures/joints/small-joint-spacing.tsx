/** A corner seen from outside: the fingers of this wall, and between them the ends of its mate's. */
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const JointSpacingSmall: SmallFigure = ({ values: v }) => {
  const { jointedHeight: height, wall } = v;
  const shown = height * 1.1;
  return (
    <SmallDrawing view={[0, 0, shown, height]}>
      <rect class="wood" width={shown * 2} height={height} />
      {fingerLayout(height, v.fingerWidth).map(({ from, to, wall: of }) => (
        <rect
          key={from}
          class={of === 'first' ? 'wood' : 'wood-end'}
          y={height - to}
          width={wall}
          height={to - from}
        />
      ))}
    </SmallDrawing>
  );
};

export default JointSpacingSmall;
