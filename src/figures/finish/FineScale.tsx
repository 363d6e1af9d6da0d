/** An upright scale beside a drawing for lengths under a millimeter: tenths, or thousandths of an inch by fives. */
import { format, INCH, type UnitSystem } from '../../units/index.ts';
import { Label } from '../parts/Label.tsx';

interface Props {
  x: number;
  /** Places of zero and of `length`, in the drawing's user units. */
  from: number;
  to: number;
  /** mm */
  length: number;
  system: UnitSystem;
}

/** From one tick to the next, mm. */
const step = { mm: 0.1, inch: 0.005 * INCH } as const;

export function FineScale({ x, from, to, length, system }: Props) {
  const ticks = Array.from(
    { length: Math.floor(length / step[system] + 1e-6) + 1 },
    (_, i) => i * step[system],
  );
  const place = (mm: number) => from + ((to - from) * mm) / length;
  return (
    <g class="rule-scale">
      <path class="thin" d={ticks.map((at, i) => `M${x} ${place(at)}h${i % 2 === 0 ? 8 : 5}`).join('')} />
      <path class="thin" d={`M${x} ${from}V${to}`} />
      {ticks.map((at, i) =>
        i % 2 === 0 ? (
          <Label key={at} x={x + 12} y={place(at)} anchor="start">
            {at === 0 ? '0' : format(at, 'length', { system, unit: false, as: 'exact' })}
          </Label>
        ) : null,
      )}
      <Label x={x + 12} y={Math.max(from, to) + 18} anchor="start">
        {system === 'mm' ? 'mm' : 'in'}
      </Label>
    </g>
  );
}
