/** A corner of fingers from outside, opened flat, with the groove of the bottom through it. */
import { cornerHoles } from '../../calc/grooves/groove-corner.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const GrooveShowsSmall: SmallFigure = ({ values: v }) => {
  const high = 4 * v.fingerWidth;
  const half = high * 0.75;
  const ends = [0, 1, 2, 3].map((n) => ({ n, x: n % 2 === 0 ? half : half - v.wall }));
  const groove = high - v.bottomLip - v.bottomTongue;
  return (
    <SmallDrawing view={[0, 0, 2 * half, high]}>
      <rect class="wood" width={2 * half} height={high} />
      {ends.map(({ n, x }) => (
        <rect
          key={n}
          class="wood-end"
          x={x}
          y={high - (n + 1) * v.fingerWidth}
          width={v.wall}
          height={v.fingerWidth}
        />
      ))}
      <path class="hidden-line" d={`M0 ${groove}H${2 * half}M0 ${groove + v.bottomTongue}H${2 * half}`} />
      {cornerHoles(v.bottomLip, v.bottomTongue, v.fingerWidth).map(({ pair, from, to }) => (
        <rect
          key={from}
          class="hole"
          x={pair === 'first' ? half + v.wall - v.grooveDepth : half - v.wall}
          y={high - to}
          width={v.grooveDepth}
          height={to - from}
        />
      ))}
    </SmallDrawing>
  );
};

export default GrooveShowsSmall;
