/**
 * What meets what: the end of one wall with its faces by the kind of grain that meets there, and below it the areas of
 * six corners of this height and wall as bars of one scale. User units are screen pixels at the narrowest width.
 */
import type { Values } from '../../box/whole/index.ts';
import { pieces } from '../../calc/joints/finger-layout.ts';
import * as area from '../../calc/joints/glue-area.ts';
import { keyGlueArea } from '../../calc/joints/keys.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { sizeOfEnd, WallEnd } from './WallEnd.tsx';

const [width, row, bar, top] = [350, 40, 14, 236] as const;

interface Corner {
  readonly joint: Values['joint'];
  readonly name: string;
  /** Side grain on side grain, and faces in which fibers are cut, mm²; what slots for keys take off the miter is not taken off here. */
  readonly long: number;
  readonly cut: number;
}

/** Six corners of this box, from the least long grain a joint can have to the most; tails, keys and fingers are the box's. */
export function cornersOf(v: Values): Corner[] {
  const { jointedHeight: H, wall: t } = v;
  const butt = area.buttGlueArea.compute({ H, t });
  const miter = area.miterGlueArea.compute({ H, t });
  const tails = { N: 2 * v.tailCount, t, s: v.dovetailSlope };
  return [
    { joint: 'butt', name: 'butt joint', long: 0, cut: butt },
    { joint: 'rabbet', name: 'rabbet', long: 0, cut: area.rabbetGlueArea.compute({ H, t, r: t / 2 }) },
    { joint: 'mitre', name: 'plain miter', long: 0, cut: miter },
    {
      joint: 'keyed-mitre',
      name: `miter, ${v.keyCount} ${v.keyCount === 1 ? 'key' : 'keys'}`,
      long: keyGlueArea.compute({ N: v.keyCount, d: t }),
      cut: miter,
    },
    {
      joint: 'finger',
      name: `${pieces(H, v.fingerWidth)} fingers`,
      long: area.fingerGlueArea.compute({ n: pieces(H, v.fingerWidth), t }),
      cut: butt,
    },
    {
      joint: 'dovetail',
      name: `${v.tailCount} ${v.tailCount === 1 ? 'tail' : 'tails'}`,
      long: area.dovetailGlueArea.compute(tails),
      cut: butt,
    },
  ];
}

export function WhatMeets({ values: v }: { values: Values }) {
  const rows = cornersOf(v);
  const most = Math.max(...rows.map(({ long, cut }) => long + cut));
  const [wide, high] = sizeOfEnd(v.wall, v.jointedHeight);
  const scale = Math.min(176 / high, 170 / wide);
  const place = (at: number) => top + at * row;
  return (
    <Drawing
      view={[-4, 0, width + 8, place(rows.length) + 4]}
      title="What meets what at a corner"
      description={rows
        .map(
          ({ name, long, cut }) =>
            `${name}: ${said(long, 'area')} long grain on long grain, ${said(cut, 'area')} with cut fibers`,
        )
        .join('; ')}
    >
      <WallEnd values={v} x={8} foot={190} scale={scale} told />
      <rect class="part-finger" fill="url(#band)" x={200} y={44} width={22} height={14} />
      <Label x={200} y={72} anchor="start">
        long grain
      </Label>
      <Label x={200} y={90} anchor="start">
        on long grain
      </Label>
      <rect class="end" x={200} y={118} width={22} height={14} />
      <Label x={200} y={146} anchor="start">
        cut fibers on one
      </Label>
      <Label x={200} y={164} anchor="start">
        side or both
      </Label>
      {rows.map(({ joint, name, long, cut }, i) => {
        const scaled = (mm2: number) => (mm2 / most) * width;
        return (
          <g key={joint} class={joint === v.joint ? 'current' : undefined}>
            <Label x={0} y={place(i)} anchor="start">
              {joint === v.joint ? `${name}: yours` : name}
            </Label>
            {long > 0 ? (
              <NumberLabel x={width} y={place(i)} anchor="end" value={long} kind="area" after=" long" />
            ) : (
              <Label x={width} y={place(i)} anchor="end">
                no long grain
              </Label>
            )}
            <rect class="end" x={scaled(long)} y={place(i) + 9} width={scaled(cut)} height={bar} />
            {long > 0 && (
              <rect
                class="part-finger"
                fill="url(#band)"
                x={0}
                y={place(i) + 9}
                width={scaled(long)}
                height={bar}
              />
            )}
          </g>
        );
      })}
    </Drawing>
  );
}
