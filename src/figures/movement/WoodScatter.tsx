/**
 * Movement against density for many woods. The ratio of the two movements is told by the shape of a point,
 * the chosen wood by a ring and its name.
 */

import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { axesOn } from '../plot/Plot.tsx';

export interface WoodPoint {
  readonly id: string;
  readonly name: string;
  readonly density: number;
  /** Percent of the size per 1 % moisture, along the rings. */
  readonly movement: number;
  readonly ratio: number;
}

const width = 340;
const height = 250;
const text = textSize(width);
const frame = { left: 34, right: width - 18, top: 8, bottom: height - 36 } as const;
const axes = axesOn(frame, [250, 1000], [0.1, 0.5]);
const { left, bottom, x: across, y: up } = axes;
const [densities, movements] = [across.ticks(4), up.ticks(4)];

/** Shapes by ratio, from even movement to very uneven. */
export const shapes = [
  { below: 1.6, name: 'circle: ratio below 1.6' },
  { below: 2.1, name: 'square: 1.6 to 2.1' },
  { below: Number.POSITIVE_INFINITY, name: 'triangle: 2.1 and more' },
] as const;

function Point({ x, y, ratio }: { x: number; y: number; ratio: number }) {
  const shape = shapes.findIndex(({ below }) => ratio < below);
  if (shape === 0) return <circle class="point" cx={x} cy={y} r="3" />;
  if (shape === 1) return <rect class="point" x={x - 2.7} y={y - 2.7} width="5.4" height="5.4" />;
  return <path class="point" d={`M${x} ${y - 3.6}l3.6 6.2h-7.2z`} />;
}

export interface WoodScatterProps {
  points: readonly WoodPoint[];
  chosen: string | undefined;
  onPick: (id: string) => void;
}

export function WoodScatter({ points, chosen, onPick }: WoodScatterProps) {
  const marked = points.find(({ id }) => id === chosen);
  const pick = (event: MouseEvent & { currentTarget: SVGGElement }) => {
    const box = event.currentTarget.ownerSVGElement!.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * width;
    const y = ((event.clientY - box.top) / box.height) * height;
    const distance = (point: WoodPoint) => Math.hypot(across(point.density) - x, up(point.movement) - y);
    const [nearest] = [...points].sort((a, b) => distance(a) - distance(b));
    if (nearest && distance(nearest) < 24) onPick(nearest.id);
  };
  return (
    <Drawing
      view={[0, 0, width, height]}
      title="Movement against density"
      description={`${points.length} woods. Denser woods tend to move more, with wide differences. ${
        marked ? `Marked: ${marked.name}.` : ''
      }`}
    >
      {/* The slider under the drawing does the same by keyboard. */}
      <g onClick={pick}>
        <rect x="0" y="0" width={width} height={height} class="hit" />
        <AxisLines on={axes} />
        <path
          class="axis"
          d={
            densities.map((tick) => `M${across(tick)} ${bottom}v4`).join('') +
            movements.map((tick) => `M${left} ${up(tick)}h-4`).join('')
          }
        />
        <Ticks on={axes} at={densities} side="below" />
        <Ticks on={axes} at={movements} side="left" />
        <Label x={(left + width) / 2} y={height - text * 0.6}>
          density, kg/m³
        </Label>
        <Label x={left + 4} y={text * 0.7} anchor="start">
          movement along the rings, % for 1 %
        </Label>
        {points.map((point) => (
          <Point key={point.id} x={across(point.density)} y={up(point.movement)} ratio={point.ratio} />
        ))}
        {marked && (
          <>
            <circle class="target" cx={across(marked.density)} cy={up(marked.movement)} r="7" />
            <Label
              class="halo"
              x={across(marked.density)}
              y={up(marked.movement) + (up(marked.movement) < 40 ? 1.3 : -1.3) * text}
              anchor={
                across(marked.density) > width * 0.75
                  ? 'end'
                  : across(marked.density) < width * 0.25
                    ? 'start'
                    : 'middle'
              }
            >
              {marked.name}
            </Label>
          </>
        )}
      </g>
    </Drawing>
  );
}
