/** A glass with a batch in it, each liquid a layer by its parts, as if they did not mix. */
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

export interface Layer {
  readonly name: string;
  readonly parts: number;
  /** mm³ */
  readonly volume: number;
}

const [left, right, floor, high] = [24, 124, 186, 150] as const;
const fills = ['thing', 'water', 'inside'] as const;

export function BatchGlass({
  values: { layers, batch },
}: {
  values: { layers: readonly Layer[]; batch: number };
}) {
  const volume = (value: number) => said(value, 'volume', { digits: 1 });
  let foot = floor;
  return (
    <Drawing
      view={[0, 0, 350, 206]}
      title="A batch and its parts"
      description={`${volume(batch)} in all: ${layers.map(({ name, parts, volume: of }) => `${name}, ${parts} ${parts === 1 ? 'part' : 'parts'}, ${volume(of)}`).join('; ')}.`}
    >
      {layers.map(({ name, parts, volume: of }, at) => {
        const deep = (of / batch) * high;
        foot -= deep;
        const y = foot + deep / 2;
        return (
          <g key={name}>
            <rect class={fills[at]!} x={left} y={foot} width={right - left} height={deep} />
            <path
              class="thin"
              d={Array.from(
                { length: Math.max(0, parts - 1) },
                (_, i) => `M${left} ${foot + ((i + 1) * deep) / parts}h14`,
              ).join('')}
            />
            <Label x={right + 14} y={y - 9} anchor="start">
              {name}, {parts} {parts === 1 ? 'part' : 'parts'}
            </Label>
            <NumberLabel x={right + 14} y={y + 9} anchor="start" value={of} kind="volume" digits={1} />
          </g>
        );
      })}
      <path class="curve" d={`M${left} 20V${floor}H${right}V20`} />
    </Drawing>
  );
}
