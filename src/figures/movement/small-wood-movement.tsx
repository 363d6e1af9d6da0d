/** The edge of the lid in its groove, twelve times larger, pushed to the other side: today, and, dashed, on the dampest day. */
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';

const times = 12;

const WoodMovementSmall: SmallFigure = ({ values: v }) => {
  const [width, height] = smallSheet.map((side) => side / times) as [number, number];
  const { lidGrooveDepth: deep, lidPlay: play, lidThickness: slot, lidTongue: thickness } = v;
  // The end of the groove stands a third of the way in from the right.
  const end = width * 0.66;
  const [top, edge] = [(height - slot) / 2, end - play];
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <path
        class="wood-end"
        d={`M${end - deep} -1H${width - 1}V${height + 1}H${end - deep}V${top + slot}H${end}V${top}H${end - deep}Z`}
      />
      <rect class="wood" x={-1} y={top + slot - thickness} width={edge + 1} height={thickness} />
      <rect
        class="surplus"
        x={edge}
        y={top + slot - thickness}
        width={Math.max(0, v.lidSwelling)}
        height={thickness}
      />
    </SmallDrawing>
  );
};

export default WoodMovementSmall;
