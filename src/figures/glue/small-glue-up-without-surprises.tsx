/** A box from above in a strap, its corners where the glue is. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const GlueUpSmall: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const [right, foot] = [length - wall, width - wall];
  const away = wall * 0.7;
  const corners = [
    [0, 0],
    [right, 0],
    [0, foot],
    [right, foot],
  ] as const;
  return (
    <SmallDrawing view={[-2.4 * wall, -away, length + 4.8 * wall, width + 2 * away]}>
      <path
        class="wood"
        fill-rule="evenodd"
        d={`M0 0H${length}V${width}H0ZM${wall} ${wall}H${right}V${foot}H${wall}Z`}
      />
      {corners.map(([x, y]) => (
        <rect key={`${x} ${y}`} class="end" x={x} y={y} width={wall} height={wall} />
      ))}
      <rect class="curve" x={-away} y={-away} width={length + 2 * away} height={width + 2 * away} rx={away} />
      <rect
        class="thing"
        x={length + away - wall * 0.5}
        y={width / 2 - wall}
        width={wall * 1.4}
        height={2 * wall}
      />
    </SmallDrawing>
  );
};

export default GlueUpSmall;
