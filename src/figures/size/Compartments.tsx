/**
 * The inside of a box from above: walls, lining, dividers, and what each compartment holds. As a guess it has the contents
 * pushed together and the right wall missing, with dividers and lining laid below.
 */
import type { Values } from '../../box/whole/index.ts';
import { dividerSlip } from '../../calc/size/sizes.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { CompartmentsApart, origin, sheet } from './CompartmentsApart.tsx';

/** What can be marked as the length inside, mm. */
export const insideRange = { low: 60, high: 130 } as const;
const { wall: wallShown, left, top, scale, deep } = sheet;
export const insideFrame: GuessFrame = {
  width: 350,
  height: 232,
  from: [origin + insideRange.low * scale, top + deep / 2 + wallShown * scale],
  to: [origin + insideRange.high * scale, top + deep / 2 + wallShown * scale],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

/** Left ends of the compartments within the inside, mm, and their length. */
function rooms(v: Values): { starts: number[]; each: number } {
  const count = v.dividersAcross + 1;
  const taken = v.dividersAcross * (v.dividerThickness + dividerSlip);
  const each = (v.insideLength - 2 * v.lining - taken) / count;
  return {
    each,
    starts: Array.from(
      { length: count },
      (_, index) => v.lining + index * (each + v.dividerThickness + dividerSlip),
    ),
  };
}

export function Compartments({ values: v, mark, open }: Props) {
  const count = v.dividersAcross + 1;
  const thing = v.contentsLength / count;
  const { starts, each } = rooms(v);
  const y = top + wallShown * scale;
  const x = (mm: number) => origin + mm * scale;
  const end = x(v.insideLength);
  const [lining, divider] = [v.lining * scale, v.dividerThickness * scale];
  const place = (mm: number) => placeIn(insideFrame, insideRange, mm)[0];
  const below = y + deep + wallShown * scale;
  return (
    <Drawing
      view={[0, 0, insideFrame.width, insideFrame.height]}
      title="A box with dividers, from above"
      description={`Things of ${said(v.contentsLength, 'length')} in ${count} compartments, ${v.dividersAcross} dividers of ${said(v.dividerThickness, 'length')}, lining of ${said(v.lining, 'length')}. ${
        open
          ? `The inside is ${said(v.insideLength, 'length')} long.`
          : 'How long the inside must be is not drawn yet.'
      }`}
    >
      {open ? (
        <g class="arrives">
          <path
            class="wood"
            fill-rule="evenodd"
            d={`M${left} ${top}H${end + wallShown * scale}V${below}H${left}zM${origin} ${y}V${y + deep}H${end}V${y}z`}
          />
          {lining > 0 && (
            <path
              class="lining"
              d={`M${origin} ${y}h${lining}v${deep}h${-lining}zM${end} ${y}h${-lining}v${deep}h${lining}z`}
            />
          )}
          {starts.map((start, index) => (
            <g key={start}>
              <rect
                class="thing"
                x={x(start + (each - thing) / 2)}
                y={y + 8}
                width={thing * scale}
                height={deep - 16}
              />
              {index > 0 && (
                <rect
                  class="wood-end"
                  x={x(start) - divider - dividerSlip * scale}
                  y={y}
                  width={divider}
                  height={deep}
                />
              )}
            </g>
          ))}
          <NumberLabel
            x={(origin + end) / 2}
            y={top - 14}
            value={v.insideLength}
            kind="length"
            before="inside "
          />
        </g>
      ) : (
        <CompartmentsApart values={v} />
      )}
      {mark !== undefined && <path class="ghost" d={`M${place(mark)} ${top - 6}V${below + 4}`} />}
      {open && (
        <>
          <NumberLabel
            x={left}
            y={below + 18}
            anchor="start"
            value={v.dividerThickness}
            kind="length"
            before="dividers "
          />
          <NumberLabel
            x={180}
            y={below + 18}
            anchor="start"
            value={v.lining}
            kind="length"
            before="lining "
          />
        </>
      )}
    </Drawing>
  );
}
