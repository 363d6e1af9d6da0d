/** The contents from above with the room and the wall at their left: where the right end of the box comes is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked as the length outside, mm. */
export const outsideRange = { low: 140, high: 210 } as const;
const [left, top, scale] = [12, 34, 1.55] as const;
const middle = top + 62 * scale;
const at = (mm: number) => left + mm * scale;
export const outsideFrame: GuessFrame = {
  width: 350,
  height: 272,
  from: [at(outsideRange.low), middle],
  to: [at(outsideRange.high), middle],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function OutsideGuess({ values: v, mark, open }: Props) {
  const { contentsLength: long, contentsWidth: wide, clearance: room, wall, outsideLength, outsideWidth } = v;
  const high = outsideWidth * scale;
  const first = at(wall + room);
  const place = (mm: number) => placeIn(outsideFrame, outsideRange, mm)[0];
  return (
    <Drawing
      view={[0, 0, outsideFrame.width, outsideFrame.height]}
      title="What goes in, from above, and the box begun around it"
      description={`The contents are ${said(long, 'length')} long, with ${said(room, 'length')} of room on each side; the walls are ${said(wall, 'length')} thick. ${
        open
          ? `The box is ${said(outsideLength, 'length')} long outside.`
          : 'Where the box ends is not drawn yet.'
      }`}
    >
      <path
        class="wood"
        d={`M${at(outsideRange.low - 6)} ${top}H${left}v${high}H${at(outsideRange.low - 6)}v${-wall * scale}H${at(wall)}v${-high + 2 * wall * scale}H${at(outsideRange.low - 6)}z`}
      />
      {open && (
        <g class="arrives">
          <path
            class="wood"
            d={`M${left} ${top}H${at(outsideLength)}v${high}H${left}zM${at(wall)} ${top + wall * scale}v${high - 2 * wall * scale}H${at(outsideLength - wall)}v${-high + 2 * wall * scale}z`}
            fill-rule="evenodd"
          />
          <NumberLabel
            x={at(outsideLength / 2)}
            y={top - 14}
            value={outsideLength}
            kind="length"
            before="outside "
          />
        </g>
      )}
      <rect
        class="thing"
        x={first}
        y={top + (wall + room) * scale}
        width={long * scale}
        height={wide * scale}
      />
      <NumberLabel
        class="halo"
        x={first + 42 * scale}
        y={middle}
        value={long}
        kind="length"
        before="contents "
      />
      <NumberLabel x={left} y={top + high + 16} anchor="start" value={wall} kind="length" before="walls " />
      <NumberLabel
        x={at(70)}
        y={top + high + 16}
        anchor="start"
        value={room}
        kind="length"
        before="room on each side "
      />
      {mark !== undefined && <path class="ghost" d={`M${place(mark)} ${top - 6}V${top + high + 6}`} />}
      {!open && (
        <Label x={at(outsideRange.low)} y={top - 14}>
          the end?
        </Label>
      )}
    </Drawing>
  );
}
