/** The end of a box glued up shut, cut across: where the saw frees its lid, and what it takes from the height. */
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Web left inside for a knife, mm: 0.4 to 1.5 are all in use, common practice; drawn is a middle one. */
const web = 0.8;

export function SawnLid({ values: v }: { values: Values }) {
  const { jointedHeight: glued, outsideWidth: width, lidHeight, kerf, wall } = v;
  const scale = Math.min(230 / width, 170 / glued);
  const [wide, tall, t] = [width * scale, glued * scale, wall * scale];
  const [left, top] = [64 + (230 - wide) / 2, 14];
  const y = (mm: number) => top + mm * scale;
  const cut = Math.max(1, (wall - web) * scale);
  const bottom = top + tall - (v.bottomLip + v.bottomTongue) * scale;
  return (
    <Drawing
      view={[0, 0, 350, top + tall + 40]}
      title="A lid is sawn off a shut box"
      description={`Glued up it is ${said(glued, 'length', { as: 'size' })} high, of which the saw takes ${said(kerf, 'length')}: with its lid on it is then ${said(v.outsideHeight, 'length', { as: 'size' })} high.`}
    >
      <rect class="inside" x={left + t} y={top} width={wide - 2 * t} height={tall} />
      <rect class="end" x={left} y={top} width={t} height={tall} />
      <rect class="end" x={left + wide - t} y={top} width={t} height={tall} />
      <rect class="wood" x={left + t / 2} y={y(v.lidLip)} width={wide - t} height={v.lidThickness * scale} />
      <rect class="wood" x={left + t / 2} y={bottom} width={wide - t} height={v.bottomTongue * scale} />
      <rect
        fill="url(#jam)"
        stroke="currentColor"
        x={left}
        y={y(lidHeight)}
        width={cut}
        height={kerf * scale}
      />
      <rect
        fill="url(#jam)"
        stroke="currentColor"
        x={left + wide - cut}
        y={y(lidHeight)}
        width={cut}
        height={kerf * scale}
      />
      <Dimension from={[left - 40, top]} to={[left - 40, top + tall]} value={glued} text={13} />
      <Dimension from={[left - 14, top]} to={[left - 14, y(lidHeight)]} value={lidHeight} text={13} />
      <Label class="on-lines" x={left + wide / 2} y={y(lidHeight + kerf / 2)}>
        saw cut, a web left inside
      </Label>
      <Label x={left + wide / 2} y={top + tall + 20}>
        shut and glued
      </Label>
    </Drawing>
  );
}
