/** The walls of a box on one strip, beside the least length that a machine is to be given. */
import type { Values } from '../../box/whole/index.ts';
import { shortestMachineLength } from '../../calc/board/stock.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const [left, width, top] = [4, 342, 58] as const;
const names = ['front', 'side', 'back', 'side'] as const;

export function JoinedStrip({ values: v }: { values: Values }) {
  const lengths = [v.outsideWidth, v.outsideLength, v.outsideWidth, v.outsideLength];
  const whole = lengths.reduce((sum, one) => sum + one, 0) + 3 * v.kerf;
  const scale = width / Math.max(whole, shortestMachineLength);
  const high = Math.max(18, v.outsideHeight * scale);
  const least = shortestMachineLength * scale;
  let x = left;
  return (
    <Drawing
      view={[0, 0, 350, top + high + 44]}
      title="The walls on their strip, and the least length for a machine"
      description={`The strip is ${said(whole, 'length')} long; the shortest wall is ${said(Math.min(...lengths), 'length')}. Nothing under ${said(shortestMachineLength, 'length', { digits: 0 })} goes into a planer or over a jointer.`}
    >
      <path
        class="force"
        d={`M${left} ${top - 14}H${left + least}`}
        marker-start="url(#arrow)"
        marker-end="url(#arrow)"
      />
      <NumberLabel
        x={left}
        y={top - 32}
        anchor="start"
        value={shortestMachineLength}
        kind="length"
        digits={0}
        before="at least "
        after=" for a machine"
      />
      {lengths.map((length, i) => {
        const at = x;
        x += (length + v.kerf) * scale;
        const wide = length * scale;
        return (
          <g key={i}>
            <rect class="wood" x={at} y={top} width={wide} height={high} />
            {wide > 40 && (
              <Label class="on-lid" x={at + wide / 2} y={top + high / 2}>
                {names[i]}
              </Label>
            )}
          </g>
        );
      })}
      <NumberLabel
        x={left}
        y={top + high + 20}
        anchor="start"
        value={whole}
        kind="length"
        digits={0}
        before="all four walls in one piece: "
      />
    </Drawing>
  );
}
