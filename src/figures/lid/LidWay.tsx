/**
 * A sliding-lid box cut along its middle: half open in true proportion, and below it, larger, what stands at the front
 * when it is shut.
 */
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** The whole box: most of its width and height on the sheet; the corner is drawn so many times as large as life. */
const [wide, tall] = [340, 130] as const;
const corner = { scale: 8, foot: 128 } as const;

export function LidWay({ values: v }: { values: Values }) {
  const { outsideLength: length, outsideHeight: height, wall, lidGrooveDepth: deep, lidLip, lidTongue } = v;
  // Of a box too small to be judged half is half all the same.
  const held = Number.isFinite(v.lidHeldHalfOpen) ? v.lidHeldHalfOpen : v.lidLength / 2;
  const out = v.lidLength - held;
  const scale = Math.min(wide / (length + out), tall / height);
  const x = (mm: number) => 5 + (out + mm) * scale;
  const y = (mm: number) => 30 + mm * scale;
  const [front, foot] = [v.frontLowered, y(height)];
  const back = length - wall;
  const top = foot + 40;
  const at = (mm: number) => top + mm * corner.scale;
  const end = Math.min(130, wall * corner.scale);
  const low = Math.min(at(front), at(0) + corner.foot - 20);
  const sheet = at(0) + corner.foot;
  return (
    <Drawing
      view={[0, 0, 350, sheet + 8]}
      title="A sliding lid half open, and the front it comes out over"
      description={`The front ends ${said(front, 'length', { as: 'size' })} below the sides. Half open, ${said(held, 'length', { digits: 0 })} of the lid are still in the side grooves.`}
    >
      <rect class="inside" x={x(0)} y={y(0)} width={length * scale} height={height * scale} />
      <path class="hidden-line" d={`M${x(0)} ${y(lidLip)}H${x(back)}M${x(0)} ${y(front)}H${x(back)}`} />
      <rect class="end" x={x(0)} y={y(front)} width={wall * scale} height={(height - front) * scale} />
      <path
        class="end"
        d={`M${x(back)} ${y(0)}H${x(length)}V${foot}H${x(back)}V${y(front)}H${x(back + deep)}V${y(lidLip)}H${x(back)}z`}
      />
      <rect
        class="wood"
        x={x(-out)}
        y={y(front - lidTongue)}
        width={v.lidLength * scale}
        height={lidTongue * scale}
      />
      <rect
        class="wood"
        x={x(wall - v.grooveDepth)}
        y={y(height - v.bottomLip - v.bottomTongue)}
        width={(back - wall + 2 * v.grooveDepth) * scale}
        height={v.bottomTongue * scale}
      />
      <path class="thin" d={`M${x(0)} ${y(0)}V14M${x(held)} ${y(front - lidTongue) - 2}V14`} />
      <Dimension
        from={[x(0), 18]}
        to={[x(held), 18]}
        value={held}
        digits={0}
        denominator={8}
        text={13}
        before="held "
      />
      <Label x={4} y={foot + 20} anchor="start">
        its front, shut, drawn larger
      </Label>
      <path class="inside" d={`M60 ${at(0)}H300V${sheet}H60z`} />
      <path class="hidden-line" d={`M60 ${at(lidLip)}H300M60 ${at(front)}H300`} />
      <rect class="wood" x="60" y={at(front - lidTongue)} width="240" height={lidTongue * corner.scale} />
      <rect class="end" x="60" y={low} width={end} height={Math.max(0, sheet - low)} />
      <Label class="on-lid" x={180} y={at(front - lidTongue / 2)}>
        lid
      </Label>
      <Label class="on-lines" x={60 + end / 2} y={(low + sheet) / 2}>
        front
      </Label>
      <path class="thin" d={`M56 ${at(0)}H30M56 ${at(front)}H30`} />
      <Dimension from={[36, at(0)]} to={[36, at(front)]} value={front} text={13} />
    </Drawing>
  );
}
