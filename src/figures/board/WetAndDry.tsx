/** The same water, over the wood with it and over the wood without it. */
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const [left, width, top, bar] = [10, 330, 30, 30] as const;

/** @param wet, dry moisture on wet and on dry wood, % */
export function WetAndDry({ wet, dry }: { wet: number; dry: number }) {
  const water = (width * wet) / 100;
  const wood = width - water;
  return (
    <Drawing
      view={[0, 0, 350, 150]}
      title="The same water, measured against wet and against dry wood"
      description={`${said(wet, 'percent', { digits: 0 })} of the wet wood is ${said(dry, 'percent', { digits: 0 })} of the dry wood.`}
    >
      <rect class="wood" x={left} y={top} width={wood} height={bar} />
      <rect class="water" x={left + wood} y={top} width={water} height={bar} />
      <NumberLabel
        x={left}
        y={top - 14}
        anchor="start"
        value={wet}
        kind="percent"
        digits={0}
        before="water over all of it: "
      />
      <rect class="wood" x={left} y={top + 84} width={wood} height={bar} />
      <NumberLabel
        x={left}
        y={top + 70}
        anchor="start"
        value={dry}
        kind="percent"
        digits={0}
        before="water over the dry wood: "
      />
      <rect class="water" x={left} y={top + 84 + bar - 8} width={Math.min(water, 340)} height={8} />
      {wet > 22 && (
        <Label class="on-lines" x={left + wood + water / 2} y={top + bar / 2}>
          water
        </Label>
      )}
      {wood > 60 && (
        <Label class="on-lid" x={left + wood / 2} y={top + bar / 2}>
          dry wood
        </Label>
      )}
    </Drawing>
  );
}
