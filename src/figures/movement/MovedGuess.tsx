/** The worse edge of a bottom in its groove, enlarged, before and after a move to drier air: how far it draws back is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Shrinkage that can be marked, mm. */
export const movedRange = { low: 0, high: 6 } as const;
/** Units of the drawing for each millimeter. */
const px = 32;
const slot = { top: 44, bottom: 104 } as const;
const middle = (slot.top + slot.bottom) / 2;
/** The bottom lies against the other side, so all of its play is here; the mark starts where its edge is. */
const before = 94;
export const movedFrame: GuessFrame = {
  width: 350,
  height: 190,
  from: [before, middle],
  to: [before + movedRange.high * px, middle],
};
const place = (mm: number) => placeIn(movedFrame, movedRange, mm)[0];

/** How far the bottom shrinks, mm. */
export const shrinksBy = (v: Values): number => -v.bottomShrinking;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function MovedGuess({ values: v, system, mark, open }: Props) {
  const shrinks = shrinksBy(v);
  const end = before - v.bottomPlayToday * px;
  const mouth = before + (v.grooveDepth - v.bottomPlayToday) * px;
  const edge = open ? Math.min(336, place(shrinks)) : before;
  const drops = v.bottomEngagementCrept <= 0;
  const sheet = (x: number) => `M348 ${slot.top + 4}H${x}V${slot.bottom - 4}H348`;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, movedFrame.width, movedFrame.height]}
      title="The edge of a bottom that moves house"
      description={`The bottom is ${said(v.bottomWidth, 'length', { digits: 0 })} wide and lies against the other side. In this groove ${fine(v.grooveDepth - v.bottomPlayToday)} of it are held. ${
        open
          ? `In the drier house it shrinks by ${fine(shrinks)}${drops ? ' and drops out' : ''}.`
          : 'What it shrinks by in the drier house is not drawn yet.'
      }`}
    >
      <path class="wood-end" d={`M2 4H${mouth}V${slot.top}H${end}V${slot.bottom}H${mouth}V146H2z`} />
      <path class={`wood ${open ? 'arrives' : ''}`} d={sheet(edge)} />
      {open && <path class="hidden-line" d={`M${before} ${slot.top + 4}V${slot.bottom - 4}`} />}
      {mark !== undefined && <path class="ghost" d={sheet(place(mark))} />}
      <Label class="on-lines" x={340} y={middle} anchor="end">
        {open ? 'bottom, after' : 'bottom, before'}
      </Label>
      <NumberLabel
        class="on-wood"
        x={mouth - 8}
        y={24}
        anchor="end"
        value={v.grooveDepth}
        kind="length"
        as="exact"
        before="groove "
      />
      {open && (
        <NumberLabel
          class="arrives"
          x={mouth + 12}
          y={24}
          anchor="start"
          value={shrinks}
          kind="length"
          as="exact"
          before="shrinks by "
        />
      )}
      {open && drops && (
        <Label class="warning" x={mouth + 12} y={124} anchor="start">
          drops out
        </Label>
      )}
      <RuleScale
        from={[place(0), 150]}
        to={[place(movedRange.high), 150]}
        length={movedRange.high}
        system={system}
      />
    </Drawing>
  );
}
