/** The floor of a slot, cut by teeth that are beveled in turn to either side: how high a ridge stays is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { toothRidge } from '../../calc/joints/teeth.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Bevel of the teeth in this guess, degrees: from memory. */
export const bevel = 15;
/** What can be marked, mm. */
export const ridgeRange = { low: 0, high: 1.6 } as const;
/** User units per mm. */
const scale = 62;
const [middle, floor, top] = [160, 206, 70] as const;
export const ridgeFrame: GuessFrame = {
  width: 350,
  height: 270,
  from: [middle, floor],
  to: [middle, floor - ridgeRange.high * scale],
};

/** Height of the ridge, mm. */
export const ridgeOf = ({ kerf }: Values) => toothRidge.compute({ k: kerf, beta: bevel });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function RidgeGuess({ values: v, system, mark, open }: Props) {
  const half = (v.kerf / 2) * scale;
  const [left, right] = [middle - half, middle + half];
  const ridge = ridgeOf(v);
  const peak = floor - (open ? ridge * scale : 0);
  return (
    <Drawing
      view={[0, 0, ridgeFrame.width, ridgeFrame.height]}
      title="A slot from the face of the wall"
      description={`The slot is ${said(v.kerf, 'length')} wide, cut by teeth beveled by ${bevel} degrees in turn to either side. ${
        open ? `A ridge ${said(ridge, 'length')} high stays in its floor.` : 'Its floor is not drawn yet.'
      }`}
    >
      <path
        class="wood"
        d={`M30 ${top}H${left}V${floor}L${middle} ${peak}L${right} ${floor}V${top}H290V${floor + 46}H30z`}
      />
      {!open && <path class="hidden-line" d={`M${left} ${floor}H${right}`} />}
      {open && (
        <g class="arrives">
          <path
            class="part-finger"
            fill="url(#jam)"
            d={`M${left} ${floor}L${middle} ${peak}L${right} ${floor}z`}
          />
          <NumberLabel
            class="on-lid"
            x={middle}
            y={floor + 24}
            value={ridge}
            kind="length"
            as="fine"
            before="ridge "
          />
        </g>
      )}
      {mark !== undefined && (
        <path class="ghost" d={`M${left} ${floor}L${middle} ${floor - mark * scale}L${right} ${floor}`} />
      )}
      <NumberLabel x={middle} y={top - 14} value={v.kerf} kind="length" before="slot " />
      <Label x={middle} y={24}>
        {`teeth beveled ${bevel}° in turn`}
      </Label>
      <RuleScale
        from={[302, floor]}
        to={[302, floor - ridgeRange.high * scale]}
        length={ridgeRange.high}
        system={system}
      />
    </Drawing>
  );
}
