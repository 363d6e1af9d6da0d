/**
 * A hinged box from its side in true proportion, shut as far as its hinges let it; below, its back edges enlarged, with
 * the knuckle. Too deep, the front stands open; too shallow, a gap stays along the back.
 */
import type { Values } from '../../box/whole/index.ts';
import { springOpen } from '../../calc/lid/hinge.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Openings that can be marked, mm. */
export const springRange = { low: 0, high: 20 } as const;
const [front, back, rim] = [70, 320, 96] as const;
/** Units a millimeter, for the width this drawing is laid out for, and in the enlarged part. */
const laidFor = 110;
const scale = (back - front) / laidFor;
const large = 11;
export const springFrame: GuessFrame = {
  width: 350,
  height: 300,
  from: [front, rim],
  to: [front, rim - springRange.high * scale],
};

/** How far the front stands open, mm; 0 where the hinges are not too deep. */
export const opensBy = (v: Values, tooDeep: number, knuckle: number): number =>
  tooDeep > 0 ? springOpen.compute({ W: v.outsideWidth + knuckle / 2, o: tooDeep, a: knuckle / 2 }) : 0;

export interface HingeSideProps {
  values: Values;
  /** mm: thickness of the knuckle, and what both leaves together are let in more than that; below zero less. */
  knuckle: number;
  tooDeep: number;
  mark?: number | undefined;
  open?: boolean;
}

export function HingeSide({ values: v, knuckle, tooDeep, mark, open = true }: HingeSideProps) {
  const opening = opensBy(v, tooDeep, knuckle);
  const gap = Math.max(0, -tooDeep);
  const whole = (back - front) / v.outsideWidth;
  // Degrees, about the pin.
  const turn = open
    ? (opening > 0 ? 2 * Math.atan(tooDeep / knuckle) : -Math.atan(gap / v.outsideWidth)) * (180 / Math.PI)
    : 0;
  const pin = back + (knuckle / 2) * whole;
  const lidHigh = Math.min(44, v.lidHeight * whole);
  // The enlarged part: its pin, and the edges around it.
  const [px, py] = [250, 236];
  const edge = px - (knuckle / 2) * large;
  const half = (open ? tooDeep / 2 : 0) * large;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, springFrame.width, springFrame.height]}
      title="A hinged lid from its side, shut as far as it goes"
      description={`The hinges are let in ${fine(Math.abs(tooDeep))} too ${tooDeep >= 0 ? 'deep' : 'shallow'}. ${
        !open
          ? 'How far the front stands open is not drawn yet.'
          : opening > 0
            ? `The front stands open by ${said(opening, 'length')}.`
            : `A gap of ${fine(gap)} stays along the back.`
      }`}
    >
      <rect class="wood" x={front} y={rim} width={back - front} height={52} />
      <g transform={turn ? `rotate(${turn.toFixed(3)} ${pin} ${rim})` : undefined}>
        <rect
          class="wood"
          x={front}
          y={rim - lidHigh - (open ? gap * whole : 0)}
          width={back - front}
          height={lidHigh}
        />
      </g>
      <circle class="wood-end" cx={pin} cy={rim} r={(knuckle / 2) * whole} />
      {mark !== undefined && (
        <path class="ghost bare" d={`M${pin} ${rim}L${front} ${rim - mark * scale}H${front - 24}`} />
      )}
      {open && opening > 0 && (
        <NumberLabel class="on-lines" x={front - 8} y={rim + 20} anchor="end" value={opening} kind="length" />
      )}
      <Label class="on-lid" x={(front + back) / 2} y={rim + 30}>
        box
      </Label>
      <Label x={4} y={166} anchor="start">
        its back edges, enlarged
      </Label>
      <clipPath id="hinge-enlarged">
        <rect x="60" y="180" width="280" height="112" />
      </clipPath>
      <g clip-path="url(#hinge-enlarged)">
        <rect class="wood-end" x="40" y={py - half} width={edge - 40} height="100" />
        <g transform={turn ? `rotate(${turn.toFixed(3)} ${px} ${py})` : undefined}>
          <rect class="wood" x="20" y={py + half - 100} width={edge - 20} height="100" />
        </g>
        <path class="axis" d={`M${px - 90} ${py}H${px}`} />
        <path
          class="axis"
          d={`M${px - 90} ${py}H${px}`}
          transform={turn > 0 ? `rotate(${turn.toFixed(3)} ${px} ${py})` : undefined}
        />
        <circle class="ready" cx={px} cy={py} r={(knuckle / 2) * large} />
        <circle class="mark" cx={px} cy={py} r="3" />
      </g>
      {open && gap > 0 && (
        <NumberLabel x={346} y={286} anchor="end" value={gap} kind="length" as="exact" before="gap " />
      )}
      <Label class="on-lid" x={76} y={198} anchor="start">
        lid
      </Label>
      <Label class="on-wood" x={76} y={280} anchor="start">
        box
      </Label>
      <Label x={px + (knuckle / 2) * large + 6} y={py} anchor="start">
        pin
      </Label>
    </Drawing>
  );
}
