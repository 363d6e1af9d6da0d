/** The first boards, opened into slices, and the parts that are cut from them, in true proportion. */
import { designOf } from '../../box/design/design.ts';
import { stockOf } from '../../box/stock/stock.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

/** As many slices as can be told apart at this size. */
const most = 3;

const StageStock: SmallFigure = ({ values }) => {
  const slices = stockOf(designOf(values)).slices.slice(0, most);
  const { boardLength: length, boardWidth: width } = values;
  const pitch = width * 1.35;
  return (
    <SmallDrawing view={[0, 0, length, pitch * (slices.length - 1) + width]}>
      {slices.map(({ placed }, row) => (
        <g key={row}>
          <rect class="stock-board" y={row * pitch} width={length} height={width} />
          <path
            class="wood"
            d={placed
              .map(({ piece, x, y }) => {
                const top = row * pitch + width - y - piece.width;
                return `M${x} ${top}h${piece.length}v${piece.width}h${-piece.length}Z`;
              })
              .join('')}
          />
        </g>
      ))}
    </SmallDrawing>
  );
};

export default StageStock;
