/**
 * Glue area of one corner as bars of one scale: fingers of several widths, a plain miter, a butt joint. Plain bars are
 * long grain on long grain, hatched bars have end grain in them. User units are screen pixels at the narrowest width.
 */
import type { Values } from '../../box/whole/index.ts';
import { pieces } from '../../calc/joints/finger-layout.ts';
import { buttGlueArea, fingerGlueArea, miterGlueArea } from '../../calc/joints/glue-area.ts';
import { toDecimals } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const width = 350;
const row = 42;
const bar = 16;

export function GlueArea({ values: v }: { values: Values }) {
  const corner = { H: v.outsideHeight, t: v.wall };
  const butt = buttGlueArea.compute(corner);
  const widths = [v.wall / 2, v.wall, 2 * v.wall, v.fingerWidth];
  const fingers = [...new Set(widths.map((one) => toDecimals(one, 3)))]
    .sort((a, b) => a - b)
    .map((one) => ({
      width: one,
      long: fingerGlueArea.compute({ n: pieces(corner.H, one), t: corner.t }),
      end: butt,
    }));
  const rows = [
    ...fingers,
    { name: 'plain miter', long: 0, end: miterGlueArea.compute(corner) },
    { name: 'butt joint', long: 0, end: butt },
  ];
  const scale = width / Math.max(...rows.map(({ long, end }) => long + end));
  return (
    <Drawing
      view={[-1, -10, width + 2, rows.length * row + 50]}
      title="Glue area of one corner"
      description={rows
        .map((one) => {
          const name = 'name' in one ? one.name : `fingers of ${said(one.width, 'length')}`;
          return `${name}: ${said(one.long, 'area')} long grain, ${said(one.end, 'area')} with end grain`;
        })
        .join('; ')}
    >
      {rows.map((one, index) => (
        <g key={index} transform={`translate(0 ${index * row})`}>
          {'name' in one ? (
            <Label x={0} y={0} anchor="start">
              {one.name}
            </Label>
          ) : (
            <NumberLabel
              x={0}
              y={0}
              anchor="start"
              value={one.width}
              kind="length"
              digits={2}
              before={one.width === v.fingerWidth ? 'fingers, yours, ' : 'fingers '}
            />
          )}
          <NumberLabel
            x={width}
            y={0}
            anchor="end"
            value={one.long || one.end}
            kind="area"
            after={one.long ? ' long grain' : ' end grain'}
          />
          <rect class="wood" x={0} y={9} width={one.long * scale} height={bar} />
          <rect class="end" x={one.long * scale} y={9} width={one.end * scale} height={bar} />
        </g>
      ))}
      <g transform={`translate(0 ${rows.length * row + 4})`}>
        <rect class="wood" x={0} y={0} width={22} height={12} />
        <Label x={28} y={6} anchor="start">
          long grain
        </Label>
        <rect class="end" x={150} y={0} width={22} height={12} />
        <Label x={178} y={6} anchor="start">
          with end grain
        </Label>
      </g>
    </Drawing>
  );
}
