/** One tile of a full-size template. Its user unit is a millimeter and its size is given in millimeters, so that it prints 1:1. */
import { toDecimals } from '../../units/index.ts';
import { bothUnits } from '../parts/Quantity.tsx';
import type { Shape } from './end-shapes.ts';
import { tile, type Window } from './tiles.ts';
import type { WallTemplate } from './wall-template.ts';

/** Blank around the drawing, for the outline's width and the marks; mm. */
const margin = 3;

const round = (value: number) => toDecimals(value, 3);

export function TemplateTile({ of, window, index }: { of: WallTemplate; window: Window; index: number }) {
  const [x1, x2] = window.x;
  const [y1, y2] = window.y;
  const width = x2 - x1 + 2 * margin;
  const height = y2 - y1 + 2 * margin;
  // Heights count up from the lower edge, user units down from the top.
  const at = (x: number, y: number) => `${round(x)},${round(of.height - y)}`;
  const clip = `tile-${of.name}-${index}`;
  const path = ({ points }: Shape) =>
    `M${points.map(([x, y]) => at(x, y)).join('L')}${points.length > 2 ? 'Z' : ''}`;
  const className = { waste: 'waste', groove: 'groove', hidden: 'dashed', line: 'dashed' } as const;
  return (
    <svg
      class="template"
      role="img"
      aria-label={`${of.label}, inside face, full size`}
      width={`${round(width)}mm`}
      height={`${round(height)}mm`}
      viewBox={`${round(x1 - margin)} ${round(of.height - y2 - margin)} ${round(width)} ${round(height)}`}
    >
      <clipPath id={clip}>
        <rect x={x1 - 0.2} y={of.height - y2 - 0.2} width={x2 - x1 + 0.4} height={y2 - y1 + 0.4} />
      </clipPath>
      <g clip-path={`url(#${clip})`}>
        {of.shapes.map((shape, place) => (
          <path key={place} class={className[shape.as]} d={path(shape)} />
        ))}
        <rect class="outline" x={0} y={0} width={round(of.length)} height={round(of.height)} />
      </g>
      {of.shapes.map((shape, place) => (
        <ShapeLabel key={place} shape={shape} window={window} top={of.height} />
      ))}
      <Joins of={of} window={window} />
    </svg>
  );
}

/** Words at the middle of what this tile shows of a groove or rabbet. */
function ShapeLabel({ shape, window, top }: { shape: Shape; window: Window; top: number }) {
  const { label, depth, points, as } = shape;
  if (!label || as !== 'groove') return null;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const from = Math.max(Math.min(...xs), window.x[0]);
  const to = Math.min(Math.max(...xs), window.x[1]);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  if (to - from < 45 || middle < window.y[0] || middle > window.y[1]) return null;
  const text = (system: 'mm' | 'inch') =>
    `${label}${depth === undefined ? '' : `, ${bothUnits(depth, 'length', { as: 'size' })[system]} deep`}`;
  return (
    <>
      {(['mm', 'inch'] as const).map((system) => (
        <text
          key={system}
          class={system}
          x={(from + to) / 2}
          y={top - middle}
          text-anchor="middle"
          dominant-baseline="central"
        >
          {text(system)}
        </text>
      ))}
    </>
  );
}

/** Where two tiles overlap: a cut line on each, and rings that must lie on each other. */
function Joins({ of, window }: { of: WallTemplate; window: Window }) {
  const [x1, x2] = window.x;
  const [y1, y2] = window.y;
  const rings: [number, number][] = [];
  const columns = [
    ...(x1 > 0 ? [x1 + tile.overlap / 2] : []),
    ...(x2 < of.length ? [x2 - tile.overlap / 2] : []),
  ];
  const rows = [
    ...(y1 > 0 ? [y1 + tile.overlap / 2] : []),
    ...(y2 < of.height ? [y2 - tile.overlap / 2] : []),
  ];
  for (const x of columns) for (const share of [0.25, 0.75]) rings.push([x, y1 + share * (y2 - y1)]);
  for (const y of rows) for (const share of [0.25, 0.75]) rings.push([x1 + share * (x2 - x1), y]);
  return (
    <g>
      {columns.map((x) => (
        <line key={x} class="dashed" x1={x} x2={x} y1={of.height - y2} y2={of.height - y1} />
      ))}
      {rows.map((y) => (
        <line key={y} class="dashed" y1={of.height - y} y2={of.height - y} x1={x1} x2={x2} />
      ))}
      {rings.map(([x, y]) => (
        <g key={`${x},${y}`} class="fine">
          <circle cx={x} cy={of.height - y} r={2} />
          <path d={`M${x - 3} ${of.height - y}h6M${x} ${of.height - y - 3}v6`} />
        </g>
      ))}
    </g>
  );
}
