/** The right edge of the bottom in its groove, enlarged: today, held central, and on the driest day once it has crept to the left. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What may be held, mm: up to a groove as deep as the rule is long. */
export const holdRange = { low: 0, high: 5 } as const;
const slot = { top: 44, bottom: 104 } as const;
export const holdFrame: GuessFrame = { width: 350, height: 188, from: [130, 74], to: [310, 74] };
const place = (mm: number) => placeIn(holdFrame, holdRange, mm)[0];

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function HoldGuess({ values: v, system, mark, open }: Props) {
  const today = v.grooveDepth - v.bottomGap;
  const held = open ? v.bottomEngagementCrept : today;
  const drops = held <= 0;
  const end = place(v.grooveDepth);
  const edge = Math.max(4, place(held));
  return (
    <Drawing
      view={[0, 0, holdFrame.width, holdFrame.height]}
      title="The edge of the bottom in its groove"
      description={`The groove is ${said(v.grooveDepth, 'length', { as: 'fine' })} deep. Today, held central, ${said(today, 'length', { as: 'fine' })} of the bottom are in it${
        open
          ? `; on the driest day, crept to the other side, ${drops ? 'nothing: it drops out' : said(held, 'length', { as: 'fine' })}.`
          : '. How much is in it on the driest day is not drawn yet.'
      }`}
    >
      <path
        class="wood-end"
        d={`M${place(0)} 2H348V146H${place(0)}V${slot.bottom}H${end}V${slot.top}H${place(0)}z`}
      />
      <path class={`wood ${open ? 'arrives' : ''}`} d={`M2 ${slot.top + 4}H${edge}V${slot.bottom - 4}H2`} />
      {open && <path class="hidden-line" d={`M${place(today)} ${slot.top + 4}V${slot.bottom - 4}`} />}
      {mark !== undefined && (
        <path class="ghost" d={`M2 ${slot.top + 4}H${place(mark)}V${slot.bottom - 4}H2`} />
      )}
      <Label class="on-lines" x={8} y={74} anchor="start">
        {open ? 'bottom, driest day' : 'bottom, today'}
      </Label>
      <Label class="on-wood" x={340} y={18} anchor="end">
        wall
      </Label>
      {open && drops && (
        <Label class="warning" x={place(0) + 12} y={74} anchor="start">
          drops out
        </Label>
      )}
      <NumberLabel
        class="on-wood"
        x={place(0) + 6}
        y={24}
        anchor="start"
        value={v.grooveDepth}
        kind="length"
        as="fine"
        before="groove "
      />
      <RuleScale
        from={[place(0), 146]}
        to={[place(holdRange.high), 146]}
        length={holdRange.high}
        system={system}
      />
    </Drawing>
  );
}
