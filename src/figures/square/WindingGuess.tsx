/**
 * The end of a box on a flat plate, its free far corner lifted, and a straight stick on the near rim: how far the tip of
 * the stick on the far rim will stand above it is guessed. Heights are drawn many times as large, so that they are seen.
 */
import type { Values } from '../../box/whole/index.ts';
import { windingSticksReading } from '../../calc/square/twist.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What can be marked, mm. */
export const readingRange = { low: 0, high: 3 } as const;
/** A stick as one is planed, mm. */
const stickLength = { mm: 300, inch: 12 * INCH } as const;
const [left, right, rim, plate] = [14, 288, 206, 290] as const;
/** Drawing units for a mm of height. */
const tall = 54;
export const readingFrame: GuessFrame = {
  width: 350,
  height: 336,
  from: [right, rim],
  to: [right, rim - readingRange.high * tall],
};

/** What the sticks show on this box, mm. */
export const readingOf = (v: Values, system: UnitSystem): number =>
  windingSticksReading.compute({ h: v.rock, b: v.outsideWidth, S: stickLength[system] });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function WindingGuess({ values: v, system, mark, open }: Props) {
  const { rock, outsideWidth: b } = v;
  const stick = stickLength[system];
  const scale = (right - left) / stick;
  const half = (b * scale) / 2;
  const middle = (left + right) / 2;
  const lift = rock * tall;
  const reading = readingOf(v, system);
  const tip = (mm: number) => rim - mm * tall;
  return (
    <Drawing
      view={[0, 0, readingFrame.width, readingFrame.height]}
      title="A box on a plate, seen from its end, with winding sticks"
      description={`The box is ${said(b, 'length')} wide; its free far corner is ${said(rock, 'length', { as: 'fine' })} off the plate. The sticks are ${said(stick, 'length')} long. Heights are drawn ${Math.round(tall / scale)} times as large as widths. ${
        open
          ? `With their left tips in line, the far stick stands ${said(reading, 'length', { as: 'fine' })} above the near one at the right tip.`
          : 'The far stick is not drawn yet.'
      }`}
    >
      <rect class="wood" x={middle - half} y={rim} width={2 * half} height={plate - rim} />
      <path class="hidden-line" d={`M${middle - half} ${plate}L${middle + half} ${plate - lift}`} />
      <path class="axis" d={`M${left} ${plate}H${right}`} />
      <NumberLabel
        x={middle + half + 8}
        y={plate - lift / 2}
        anchor="start"
        value={rock}
        kind="length"
        as="exact"
        after=" off"
      />
      <Dimension
        from={[middle - half, plate + 16]}
        to={[middle + half, plate + 16]}
        value={b}
        text={13}
        side="after"
      />
      <path class="curve" d={`M${left} ${rim}H${right}`} />
      <Label x={left} y={rim + 14} anchor="start">
        near stick
      </Label>
      {open && (
        <g class="arrives">
          <path class="curve" d={`M${left} ${rim}L${right} ${tip(reading)}`} />
          <Label x={left + 40} y={tip(reading * 0.15) - 16} anchor="start">
            far stick
          </Label>
        </g>
      )}
      {mark !== undefined && <path class="ghost" d={`M${left} ${rim}L${right} ${tip(mark)}`} />}
      <RuleScale
        from={[right + 14, rim]}
        to={[right + 14, tip(readingRange.high)]}
        length={readingRange.high}
        system={system}
      />
    </Drawing>
  );
}
