/** A box glued up shut, from its long side: the line along which its lid is sawn off, and two hinges on it. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const LiftOffAndHingedLids: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideHeight: height, lidHeight, hingeLength: leaf } = v;
  return (
    <SmallDrawing view={[0, 0, length, height]}>
      <rect class="wood" x={0} y={0} width={length} height={height} />
      <path class="axis" d={`M0 ${lidHeight}H${length}`} />
      <rect class="wood-end" x={leaf} y={lidHeight - 3} width={leaf} height={6} />
      <rect class="wood-end" x={length - 2 * leaf} y={lidHeight - 3} width={leaf} height={6} />
    </SmallDrawing>
  );
};

export default LiftOffAndHingedLids;
