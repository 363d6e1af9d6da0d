/**
 * A mitered corner from above, standing on its edge as in a cradle over the saw. The blade comes up as far as the wall is
 * thick; how much wood it leaves below the inside corner is guessed.
 */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What can be marked as left, mm. */
export const behindRange = { low: 0, high: 10 } as const;
const [middle, heel, foot] = [150, 110, 250] as const;
/** The wall this drawing is laid out for, mm. */
const thickest = 10;
const scale = (foot - heel) / (thickest * Math.SQRT2);
export const behindFrame: GuessFrame = {
  width: 350,
  height: 316,
  from: [middle, heel],
  to: [middle, heel + behindRange.high * scale],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function KeyGuess({ values: v, system, mark, open }: Props) {
  const { wall: t, keyLeft } = v;
  const diagonal = t * Math.SQRT2 * scale;
  const edge = heel + diagonal;
  /** How far the walls are drawn above the heel. */
  const rise = 72;
  const leg = t * scale * Math.SQRT1_2;
  const floor = heel + keyLeft * scale;
  /** The end of the left wall, at its outer face. */
  const end = [middle - leg - rise, edge - leg - rise] as const;
  /** Half the width of the corner so far below the heel. */
  const half = (y: number) => edge - y;
  return (
    <Drawing
      view={[0, 0, behindFrame.width, behindFrame.height]}
      title="A mitered corner from above, standing on its edge over the saw"
      description={`The walls are ${said(t, 'length')} thick, and the slot is to be as deep as that. ${
        open ? `It leaves ${said(keyLeft, 'length')} of wood.` : 'The slot is not drawn yet.'
      }`}
    >
      <path class="wood" d={`M${middle} ${edge}L${end.join(' ')}l${leg} ${-leg}L${middle} ${heel}z`} />
      <path
        class="wood"
        d={`M${middle} ${edge}L${2 * middle - end[0]} ${end[1]}l${-leg} ${-leg}L${middle} ${heel}z`}
      />
      <path class="curve" d={`M${middle} ${heel}V${edge}`} />
      <path
        class="thin"
        d={`M${end[0] + 26} ${end[1] + 26}l${leg} ${-leg}`}
        marker-start="url(#arrow)"
        marker-end="url(#arrow)"
      />
      <NumberLabel
        class="on-lid"
        x={end[0] + 40 + leg / 2}
        y={end[1] + 38 - leg / 2}
        turn={-45}
        value={t}
        kind="length"
      />
      {open && (
        <g class="arrives">
          <path
            class="part-finger"
            fill="url(#band)"
            d={`M${middle} ${edge}l${-half(floor)} ${floor - edge}h${2 * half(floor)}z`}
          />
          <path class="curve" d={`M${middle} ${heel}V${floor}`} />
          <NumberLabel
            class="on-lid"
            x={middle + 12}
            y={(heel + floor) / 2 + 8}
            anchor="start"
            value={keyLeft}
            kind="length"
            before="left: "
          />
          <Label class="on-lines" x={middle} y={(floor + edge) / 2 - 6}>
            key
          </Label>
        </g>
      )}
      {mark !== undefined && (
        <path
          class="ghost"
          d={`M${middle - Math.min(half(heel + mark * scale), 130)} ${heel + mark * scale}H${middle + Math.min(half(heel + mark * scale), 130)}`}
        />
      )}
      <path class="force" d={`M${middle} ${foot + 54}V${edge + 12}`} marker-end="url(#arrow)" />
      <Label x={middle + 12} y={foot + 46} anchor="start">
        the saw
      </Label>
      <Label x={middle} y={26}>
        inside
      </Label>
      <RuleScale
        from={[304, heel]}
        to={[304, heel + behindRange.high * scale]}
        length={behindRange.high}
        system={system}
      />
    </Drawing>
  );
}
