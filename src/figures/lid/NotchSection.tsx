/** The front end of a sliding lid cut along its middle: how deep a thumb notch its thickness allows. */
import { practice } from '../../box/core/practice.ts';
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Stretch of lid that is shown, mm, and how many units of the drawing a millimeter is. */
const shown = 58;
const scale = 5;
const [left, top] = [8, 40] as const;

export function NotchSection({ values: v }: { values: Values }) {
  const { lidTongue: thick, notchDepth } = v;
  const depth = Math.max(0, notchDepth || 0);
  const x = (mm: number) => left + mm * scale;
  const y = (mm: number) => top + mm * scale;
  const { notchFromEnd: steep, notchRun: run } = practice;
  const foot = y(thick);
  return (
    <Drawing
      view={[0, 0, 350, top + 15 * scale + 52]}
      title="The thumb notch, cut along the lid"
      description={`The lid is ${said(thick, 'length')} thick. ${
        depth > 0
          ? `With ${said(thick - depth, 'length')} left under it the notch is ${said(depth, 'length')} deep.`
          : 'No notch is possible.'
      }`}
    >
      <path
        class="wood"
        d={`M${x(0)} ${y(0)}H${x(steep)}V${y(depth)}L${x(steep + run)} ${y(0)}H${x(shown)}V${foot}H${x(0)}z`}
      />
      <path class="hidden-line" d={`M${x(shown)} ${y(0)}V${foot}`} />
      <path
        class="force"
        d={`M${x(steep) + 56} ${y(0) - 24}L${x(steep) + 6} ${y(depth / 2)}`}
        marker-end="url(#arrow)"
      />
      <Label x={x(steep) + 62} y={y(0) - 26} anchor="start">
        thumb
      </Label>
      <Dimension
        from={[x(0), y(0) - 12]}
        to={[x(steep), y(0) - 12]}
        value={steep}
        digits={0}
        denominator={8}
        text={13}
      />
      <NumberLabel
        x={x(steep)}
        y={foot + 18}
        anchor="middle"
        value={thick - depth}
        kind="length"
        before="left under it "
      />
      <NumberLabel x={x(steep)} y={foot + 38} anchor="middle" value={depth} kind="length" before="notch " />
      <Label x={x(shown) + 8} y={y(thick / 2)} anchor="start">
        lid
      </Label>
    </Drawing>
  );
}
