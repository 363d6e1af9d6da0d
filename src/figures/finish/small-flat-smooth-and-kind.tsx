/** A box from its long side, its rim rubbed flat: what comes off is shown at one end, many times as large. */
import { rimLoss } from '../../calc/square/rim.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

/** A rock that is seen, where none is measured, mm; and how much its loss is enlarged. */
const [shown, times] = [0.5, 40] as const;

const FlatSmoothAndKindSmall: SmallFigure = ({ values: v }) => {
  const { outsideLength: L, outsideHeight: H } = v;
  const off = rimLoss.compute({ h: v.rock || shown }) * times;
  const plate = off + H;
  return (
    <SmallDrawing view={[-0.06 * L, 0, 1.12 * L, plate + 0.08 * L]}>
      <path class="inside" d={`M0 ${off}V0L${L} ${off}Z`} />
      <rect class="wood" x="0" y={off} width={L} height={H} />
      <path class="truth" d={`M${-0.05 * L} ${off}H${1.05 * L}`} />
      <path
        class="ring"
        d={[0.3, 0.5, 0.7].map((share) => `M${0.08 * L} ${off + share * H}H${0.92 * L}`).join('')}
      />
    </SmallDrawing>
  );
};

export default FlatSmoothAndKindSmall;
