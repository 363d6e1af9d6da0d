/** Boards as they are cut up: their end as it is sawn into walls, a cut at a slant, a line of the figure at a corner. */
import { layerClass, layersOf } from '../board/layers.ts';
import { Between, Num, Sketch, Sym, Word } from './sketch.tsx';

interface SawnProps {
  title: string;
  /** mm */
  wall: number;
  planing: number;
  kerf: number;
  thickness: number;
  /** mm that fill the height; for states drawn to one scale. */
  fill: number;
}

/** The end of a board that gives two walls. */
export function SawnEnd({ title, wall, planing, kerf, thickness, fill }: SawnProps) {
  const scale = 112 / fill;
  const foot = 120;
  const layers = layersOf(2, { wall, planing, kerf, thickness });
  const [first] = layers.filter(({ kind }) => kind === 'wall');
  return (
    <Sketch title={title} height={148}>
      {layers.map(({ kind, from, to }) => (
        <rect
          key={from}
          {...layerClass[kind]}
          x={40}
          y={foot - to * scale}
          width={72}
          height={(to - from) * scale}
        />
      ))}
      <Between from={[28, foot - thickness * scale]} to={[28, foot]} />
      <Sym of="T" x={14} y={foot - (thickness * scale) / 2} />
      <Sym of="t" x={124} y={foot - ((first!.from + first!.to) / 2) * scale} />
      <Sym of="k" x={124} y={foot - (thickness * scale) / 2} />
      <Num of="T" value={thickness} x={40} y={foot + 16} anchor="start" />
    </Sketch>
  );
}

/** Four walls in a row with the cuts between them, and what is left to trim, in true proportion but for the width. */
export function RowOfWalls({
  title,
  walls,
  kerf,
  spare,
  length,
}: {
  title: string;
  walls: readonly number[];
  kerf: number;
  spare: number;
  length: number;
}) {
  const scale = 152 / length;
  let x = 8 + (spare / 2) * scale;
  return (
    <Sketch title={title} height={96}>
      <rect class="part-finger" fill="url(#pencil)" x={8} y={30} width={152} height={26} />
      <rect class="hole" x={x} y={30} width={152 - spare * scale} height={26} />
      {walls.map((wall, i) => {
        const at = x;
        x += (wall + kerf) * scale;
        return <rect key={i} class="wood" x={at} y={30} width={wall * scale} height={26} />;
      })}
      <Between from={[8, 16]} to={[160, 16]} />
      <Num of="S" value={length} x={84} y={74} />
    </Sketch>
  );
}

/** A board from its edge, with the slot of a blade at 45° through it. */
export function SlantedCut({ title, kerf }: { title: string; kerf: number }) {
  const [top, foot] = [36, 84];
  const wide = 24 * Math.SQRT2;
  const [x, lean] = [60, foot - top];
  return (
    <Sketch title={title} height={116}>
      <path class="wood-end" d={`M8 ${top}H${x}l${-lean} ${lean}H8z`} />
      <path class="wood-end" d={`M${x + wide} ${top}H160V${foot}H${x + wide - lean}z`} />
      <path class="hole" d={`M${x} ${top}h${wide}l${-lean} ${lean}h${-wide}z`} />
      <Between from={[x, top - 10]} to={[x + wide, top - 10]} />
      <Num value={kerf * Math.SQRT2} x={x + wide / 2} y={top - 24} />
      <Word of="outer face" x={160} y={top - 10} anchor="end" />
      <Num of="k" value={kerf} x={84} y={foot + 18} />
    </Sketch>
  );
}

/** Two walls at a corner, laid flat, and a line of the figure that should run across it; mm, all to one scale. */
export function LineAtCorner({
  title,
  high,
  slope,
  step,
}: {
  title: string;
  high: number;
  slope: number;
  step: number;
}) {
  const scale = 76 / high;
  const [top, corner] = [14, 84];
  const rise = Math.tan((slope * Math.PI) / 180) * 70;
  const y = top + 20;
  const off = step * scale;
  return (
    <Sketch title={title} height={top + 76 + 26}>
      <rect class="wood" x={14} y={top} width={70} height={76} />
      <rect class="wood" x={corner} y={top} width={70} height={76} />
      <path class="curve" d={`M14 ${y + rise}L${corner} ${y}`} />
      <path class="curve" d={`M${corner} ${y + off}l70 ${-rise}`} />
      {off > 4 && <path class="error-bar binds" stroke-width={3} d={`M${corner} ${y}v${off}`} />}
      <Num of="e" value={step} as="exact" x={84} y={top + 76 + 16} />
    </Sketch>
  );
}
