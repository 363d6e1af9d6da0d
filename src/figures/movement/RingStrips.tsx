/** Strips as wide as the bottom, end grain towards the reader, that go from the driest to the dampest air: the growth stands out at the right, magnified. */

import { changeOf } from '../../box/subjects/movement/panel-state.ts';
import type { Values } from '../../box/whole/index.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { stripRings } from './august/strip-rings.ts';

const [left, length] = [2, 250] as const;
export function RingStrips({ values: v }: { values: Values }) {
  const own = v.ringAngle > 2 && v.ringAngle < 88;
  const strips = [
    ['flat-sawn', 0],
    ...(own ? [['yours', v.ringAngle] as const] : []),
    ['quarter-sawn', 90],
  ] as const;
  const grown = strips.map(([, angle]) => {
    const found = changeOf(v, v.bottomWidth, v.moistureDry, v.moistureDamp, angle);
    return isRefused(found) ? Number.NaN : found.change;
  });
  const scale = length / v.bottomWidth;
  const high = Math.max(16, v.bottomThickness * scale);
  const most = Math.max(...grown.filter(Number.isFinite), 0) * scale;
  const times = [20, 10, 5, 2].find((one) => one * most <= 92) ?? 1;
  const row = high + 34;
  return (
    <Drawing
      view={[0, 0, 350, strips.length * row + 20]}
      title="Flat-sawn and quarter-sawn, from dry to damp"
      description={strips
        .map(([word], i) => `${word} grows ${said(grown[i]!, 'length', { as: 'fine' })}`)
        .join(', ')}
    >
      {strips.map(([word, angle], i) => {
        const y = i * row + 22;
        return (
          <g key={word}>
            <NumberLabel
              x={left}
              y={y - 11}
              anchor="start"
              value={grown[i]!}
              kind="length"
              as="fine"
              before={word === 'yours' ? `yours, ${v.ringAngle}°: grows ` : `${word}: grows `}
            />
            <rect class="wood-end" x={left} y={y} width={length} height={high} />
            <path class="ring" d={stripRings(angle, y, high, left, length)} />
            {Number.isFinite(grown[i]) && (
              <rect class="grown" x={left + length} y={y} width={grown[i]! * scale * times} height={high} />
            )}
          </g>
        );
      })}
      <Label x={left} y={strips.length * row + 10} anchor="start">
        {times > 1 ? `growth at the right drawn ${times} times too long` : 'in true proportion'}
      </Label>
    </Drawing>
  );
}
