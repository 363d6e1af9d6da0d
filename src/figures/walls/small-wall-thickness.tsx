/** The box from above, and half as large, with the same wall: heavy around the one, thin around the other. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

const WallThicknessSmall: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const gap = length * 0.12;
  const box = (x: number, size: number) => (
    <>
      <rect class="wood-end" x={x} y={width * (1 - size)} width={length * size} height={width * size} />
      <rect
        class="inside"
        x={x + wall}
        y={width * (1 - size) + wall}
        width={Math.max(0, length * size - 2 * wall)}
        height={Math.max(0, width * size - 2 * wall)}
      />
    </>
  );
  return (
    <SmallDrawing view={[0, 0, 1.5 * length + gap, width]}>
      {box(0, 0.5)}
      {box(length / 2 + gap, 1)}
    </SmallDrawing>
  );
};

export default WallThicknessSmall;
