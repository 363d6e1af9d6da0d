/** The end of a board as it is sawn into walls: what becomes wall, what dust and shavings, and what is left. */
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { type LayerKind, layerClass, layersOf } from './layers.ts';

const [sheet, top, high, left, right] = [350, 12, 250, 46, 200] as const;
const words: Readonly<Record<LayerKind, string>> = {
  wall: 'wall',
  planed: 'planed off',
  cut: 'saw cut',
  left: 'left over',
};
/** Rows of the key beside the board, in this order. */
const key: readonly LayerKind[] = ['wall', 'planed', 'cut', 'left'];

export function ResawStack({ values: v }: { values: Values }) {
  const count = Number.isFinite(v.slicesOfBoard) ? v.slicesOfBoard : 0;
  const thickness = v.boardThickness;
  // As thick as the sheet is high, or life size times six for a thin board.
  const scale = Math.min(high / thickness, 6);
  const foot = top + thickness * scale;
  const layers = layersOf(count, { ...v, thickness });
  const share = (kind: LayerKind) =>
    layers.reduce((sum, one) => sum + (one.kind === kind ? one.to - one.from : 0), 0) / thickness;
  return (
    <Drawing
      view={[0, 0, sheet, Math.max(foot, top + 120) + 12]}
      title="The end of a board, sawn into walls"
      description={`A board ${said(thickness, 'length')} thick gives ${count} of ${said(v.wall, 'length')}; ${Math.round(100 * share('wall'))} % of it become wall.`}
    >
      {layers.map(({ kind, from, to }) => (
        <rect
          key={from}
          {...layerClass[kind]}
          x={left}
          y={foot - to * scale}
          width={right - left}
          height={(to - from) * scale}
        />
      ))}
      <Dimension from={[left - 16, top]} to={[left - 16, foot]} value={thickness} text={13} />
      {key.map((kind, row) => (
        <g key={kind}>
          <rect {...layerClass[kind]} x={right + 22} y={top + row * 28} width={18} height={16} />
          <Label x={right + 48} y={top + row * 28 + 8} anchor="start">
            {`${words[kind]} ${Math.round(100 * share(kind))} %`}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}
