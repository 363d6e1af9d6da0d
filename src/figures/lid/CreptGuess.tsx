/** The worse edge of the lid on the driest day, pushed to the other side and just still held: where its groove must end is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { grooveDepthCrept } from '../../calc/movement/panel.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Depths that can be marked, mm. */
export const creptRange = { low: 0, high: 6 } as const;
const slot = { top: 46, bottom: 106 } as const;
export const creptFrame: GuessFrame = { width: 350, height: 190, from: [104, 76], to: [314, 76] };
const place = (mm: number) => placeIn(creptFrame, creptRange, mm)[0];

/** What must stay in the groove on the driest day, mm: as makers say it in either unit, common practice. */
export const toHold = { mm: 2, inch: (3 / 32) * INCH } as const;

/** Depth of groove that still holds so much, mm. */
export const depthNeeded = (v: Values, system: UnitSystem): number =>
  grooveDepthCrept.compute({
    E_d: toHold[system],
    p: v.lidPlayToday,
    W: v.lidWidth,
    C: v.movementDown,
    f: v.moistureToday - v.moistureDry,
  });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function CreptGuess({ values: v, system, mark, open }: Props) {
  const held = toHold[system];
  const needed = depthNeeded(v, system);
  const edge = place(held);
  const end = open ? Math.min(344, place(needed)) : edge;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, creptFrame.width, creptFrame.height]}
      title="The edge of the lid on the driest day"
      description={`Today the lid has ${fine(v.lidPlayToday)} of play in all. On the driest day it lies against the other side, and ${fine(held)} are held at this one. ${
        open
          ? `For that the groove is ${fine(needed)} deep.`
          : 'How deep its groove is for that is not drawn yet.'
      }`}
    >
      <path
        class="wood-end"
        d={`M${place(0)} 4H348V148H${place(0)}V${slot.bottom}H${end}V${slot.top}H${place(0)}z`}
      />
      {mark !== undefined && (
        <path class="ghost" d={`M${place(0)} ${slot.top}H${place(mark)}V${slot.bottom}H${place(0)}`} />
      )}
      <path class="wood" d={`M2 ${slot.top + 4}H${edge}V${slot.bottom - 4}H2`} />
      {!open && mark === undefined && (
        <path class="hidden-line" d={`M${edge} ${slot.top}H340M${edge} ${slot.bottom}H340`} />
      )}
      <Label class="on-lid" x={8} y={76} anchor="start">
        lid
      </Label>
      <NumberLabel
        class="on-wood"
        x={place(0) + 6}
        y={26}
        anchor="start"
        value={held}
        kind="length"
        as="exact"
        before="held: "
      />
      {open && (
        <NumberLabel
          class="on-wood arrives"
          x={place(0) + 6}
          y={128}
          anchor="start"
          value={v.lidPlayDry}
          kind="length"
          as="exact"
          before="play, driest day: "
        />
      )}
      <RuleScale
        from={[place(0), 148]}
        to={[place(creptRange.high), 148]}
        length={creptRange.high}
        system={system}
      />
    </Drawing>
  );
}
