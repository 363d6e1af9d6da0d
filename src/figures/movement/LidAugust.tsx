/**
 * A sliding lid seen from the end of its box, and its right edge many times larger: how far the damp of August pushes it.
 * Above the box in true proportion; in the window the way of the edge is measured on a rule.
 */
import type { Values } from '../../box/subjects/index.ts';
import { panelOf } from '../../box/subjects/movement/panel-state.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What the edge may be pushed, mm: as far as the rule goes. */
export const augustRange = { low: 0, high: INCH / 4 } as const;

const lens = { top: 104, bottom: 196 } as const;
const slot = { top: 130, bottom: 196 } as const;
export const augustFrame: GuessFrame = { width: 350, height: 232, from: [96, 163], to: [326, 163] };
const place = (mm: number) => placeIn(augustFrame, augustRange, mm)[0];
const unitsPerMm = place(1) - place(0);

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function LidAugust({ values: v, system, mark, open }: Props) {
  const { width, play, groove, thickness } = panelOf(v, 'lid');
  const whole = 300 / v.outsideWidth;
  const wall = v.wall * whole;
  const [left, top] = [25, 30];
  const lip = v.lidLip * whole;
  const high = (v.lidLip + thickness + 9) * whole;
  const grown = v.lidSwelling;
  const edge = place(open && Number.isFinite(grown) ? grown : 0);
  const end = place(play);
  const jams = open && grown > play;
  const lidLeft = left + wall - groove * whole;
  const small = width * whole;
  return (
    <Drawing
      view={[0, 0, augustFrame.width, augustFrame.height]}
      title="A lid in its grooves, seen from the end of the box"
      description={`The lid is ${said(width, 'length', { digits: 0 })} wide and ${said(play, 'length', { as: 'fine' })} are left in its grooves. ${
        open
          ? `In August its edge stands ${said(grown, 'length', { as: 'fine' })} further out${jams ? ': more than was left, so it jams' : ''}.`
          : 'Where its edge will stand in August is not drawn yet.'
      }`}
    >
      {[left, left + 300 - wall].map((x) => (
        <rect key={x} class="end" x={x} y={top} width={wall} height={high} />
      ))}
      <rect
        class="inside"
        x={lidLeft}
        y={top + lip}
        width={small + play * whole}
        height={thickness * whole}
      />
      <rect class="wood" x={lidLeft} y={top + lip} width={small} height={thickness * whole} />
      <g class="dimension">
        <line
          x1={lidLeft}
          y1={top - 8}
          x2={lidLeft + small}
          y2={top - 8}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
        <NumberLabel
          x={lidLeft + small / 2}
          y={top - 20}
          value={width}
          kind="length"
          digits={0}
          denominator={16}
          before="lid "
          after=" wide in March"
        />
      </g>
      <rect
        class="lens"
        x={lidLeft + small - 8}
        y={top + lip - 3}
        width={22}
        height={thickness * whole + 6}
      />
      <path
        class="thin"
        d={`M${lidLeft + small - 8} ${top + lip + thickness * whole + 3}L2 ${lens.top}M${lidLeft + small + 14} ${top + lip + thickness * whole + 3}L348 ${lens.top}`}
      />
      <rect class="wood-end" x={2} y={lens.top} width={346} height={lens.bottom - lens.top} />
      <path class="inside" d={`M2 ${slot.top}H${end}V${slot.bottom}H2`} />
      <path class="wood" d={`M2 ${slot.top + 5}H${place(0)}V${slot.bottom}H2`} />
      {open && Number.isFinite(grown) && (
        <g class="arrives">
          <rect
            class="wood"
            x={place(0)}
            y={slot.top + 5}
            width={Math.min(edge, end) - place(0)}
            height={slot.bottom - slot.top - 5}
          />
          {jams && (
            <rect
              class="wood jammed"
              x={end}
              y={slot.top + 5}
              width={edge - end}
              height={slot.bottom - slot.top - 5}
            />
          )}
          <line class="truth" x1={edge} y1={slot.top + 5} x2={edge} y2={slot.bottom} />
        </g>
      )}
      {mark !== undefined && (
        <path class="ghost" d={`M${place(0)} ${slot.top + 5}H${place(mark)}V${slot.bottom}`} />
      )}
      <rect class="lens" x={2} y={lens.top} width={346} height={lens.bottom - lens.top} />
      <Label class="on-wood" x={10} y={lens.top + 13} anchor="start">
        {`${Math.round(unitsPerMm / whole)} times larger`}
      </Label>
      <Label x={10} y={slot.top + 22} anchor="start">
        lid
      </Label>
      <Label class="on-wood" x={340} y={lens.top + 13} anchor="end">
        wall
      </Label>
      <NumberLabel
        class="on-wood"
        x={end + 8}
        y={slot.top - 10}
        anchor="start"
        value={play}
        kind="length"
        as="fine"
        after=" to spare"
      />
      <RuleScale
        from={[place(0), lens.bottom]}
        to={[place(augustRange.high), lens.bottom]}
        length={augustRange.high}
        system={system}
      />
    </Drawing>
  );
}
