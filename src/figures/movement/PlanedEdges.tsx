/** A lid in its two grooves with its middle left out: its play today, and what the plane takes off each edge. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

interface Props {
  values: Values;
  /** Play today, both sides together, and what is planed off each edge, mm; below zero it does not fit, or nothing is planed. */
  play: number;
  off: number;
}

const width = 350;
const stub = 14;
const [top, wall, slot, lid] = [34, 76, 44, 38] as const;
const foot = top + wall;

export function PlanedEdges({ values: v, play, off }: Props) {
  const groove = v.lidGrooveDepth;
  // The groove keeps its place in the drawing; a deep one is drawn smaller.
  const px = 92 / groove;
  const mouth = stub + groove * px;
  const gap = (play / 2) * px;
  const shaving = Math.min(60, Math.max(0, off) * px);
  const slotTop = top + (wall - slot) / 2;
  const lidTop = top + (wall - lid) / 2;
  const from = Math.max(2, stub + gap);
  const tall = `h${groove * px}`;
  const block = `M2 ${top}H${mouth}V${slotTop}H${stub}v${slot}${tall}V${foot}H2z`;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, width, foot + 30]}
      title="What the plane takes off a lid"
      description={`The lid has ${fine(play)} of play today. ${off > 0 ? `Off each edge go ${fine(off)}.` : 'Nothing is planed off.'}`}
    >
      {[0, 1].map((side) => (
        <g key={side} transform={side === 1 ? `matrix(-1 0 0 1 ${width} 0)` : undefined}>
          <path class="wood-end" d={block} />
          <path class={`wood ${play < 0 ? 'jammed' : ''}`} d={`M156 ${lidTop}H${from}v${lid}H156`} />
          {shaving > 0 && <rect class="surplus" x={from} y={lidTop} width={shaving} height={lid} />}
        </g>
      ))}
      <Label class="on-lid" x={175} y={top + wall / 2}>
        lid
      </Label>
      <NumberLabel x={2} y={14} anchor="start" value={play} kind="length" as="exact" before="play today: " />
      {off > 0 ? (
        <NumberLabel
          x={175}
          y={foot + 16}
          value={off}
          kind="length"
          as="exact"
          before="off each edge (hatched): "
        />
      ) : (
        <Label x={175} y={foot + 16}>
          nothing to plane
        </Label>
      )}
    </Drawing>
  );
}
