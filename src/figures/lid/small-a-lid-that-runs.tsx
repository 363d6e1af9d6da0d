/** A box with its lid half open, from above: what is still held, and what is out. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const ALidThatRuns: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const out = v.lidLength - v.lidHeldHalfOpen;
  return (
    <SmallDrawing view={[-out, 0, length + out, width]}>
      <rect class="wood-end" x={0} y={0} width={length} height={width} />
      <rect class="inside" x={wall} y={wall} width={length - 2 * wall} height={width - 2 * wall} />
      <rect class="wood" x={-out} y={(width - v.lidWidth) / 2} width={v.lidLength} height={v.lidWidth} />
      <path
        class="hidden-line"
        d={`M0 ${wall}H${v.lidHeldHalfOpen}M0 ${width - wall}H${v.lidHeldHalfOpen}`}
      />
    </SmallDrawing>
  );
};

export default ALidThatRuns;
