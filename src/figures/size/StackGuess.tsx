/** An end of the box cut through: what stands on the table up to the contents is drawn, where the walls end is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked as the height outside, mm. */
export const heightRange = { low: 30, high: 80 } as const;
const [table, scale, left, right] = [292, 3.3, 60, 290] as const;
const up = (mm: number) => table - mm * scale;
export const heightFrame: GuessFrame = {
  width: 350,
  height: 316,
  from: [left + 20, up(heightRange.low)],
  to: [left + 20, up(heightRange.high)],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

/** The terms of the stack from the table up: where each begins and ends, mm. */
function stackOf(v: Values): readonly { name: string; from: number; to: number }[] {
  const heights = [
    ['below the groove', v.bottomLip],
    ['bottom', v.bottomTongue],
    ['inside', v.insideHeight],
    ['lid', v.lidThickness],
    ['above the lid', v.lidLip],
  ] as const;
  let from = 0;
  return heights.map(([name, height]) => {
    const term = { name, from, to: from + height };
    from = term.to;
    return term;
  });
}

export function StackGuess({ values: v, mark, open }: Props) {
  const [lip, bottom, inside, lid] = stackOf(v);
  const wall = v.wall * scale;
  const groove = (v.wall / 3) * scale;
  const place = (mm: number) => placeIn(heightFrame, heightRange, mm)[1];
  const floor = bottom!.to;
  const top = v.outsideHeight;
  return (
    <Drawing
      view={[0, 0, heightFrame.width, heightFrame.height]}
      title="The end of a box with a sliding lid, cut through"
      description={`From the table up: ${said(v.bottomLip, 'length')} below the groove, a bottom of ${said(v.bottomTongue, 'length')}, contents of ${said(v.contentsHeight, 'length')} with ${said(v.headroom, 'length')} above them, a lid of ${said(v.lidThickness, 'length')} and ${said(v.lidLip, 'length')} above it. ${
        open ? `The walls are ${said(top, 'length')} high.` : 'Where the walls end is not drawn yet.'
      }`}
    >
      <path class="axis" d={`M10 ${table}H340`} />
      {[left, right - wall].map((x) => (
        <rect key={x} class="wood" x={x} y={up(floor + 10)} width={wall} height={table - up(floor + 10)} />
      ))}
      {open && (
        <g class="arrives">
          {[left, right - wall].map((x) => (
            <rect key={x} class="wood" x={x} y={up(top)} width={wall} height={table - up(top)} />
          ))}
          <rect
            class="wood-end"
            x={left + wall - groove}
            y={up(lid!.to)}
            width={right - left - 2 * wall + 2 * groove}
            height={v.lidThickness * scale}
          />
          <NumberLabel
            x={(left + right) / 2}
            y={up(top) - 12}
            value={top}
            kind="length"
            before="outside height "
          />
          <NumberLabel
            class="halo"
            x={(left + right) / 2}
            y={up((lid!.from + lid!.to) / 2)}
            value={v.lidThickness}
            kind="length"
            before="lid "
          />
        </g>
      )}
      <rect
        class="wood-end"
        x={left + wall - groove}
        y={up(bottom!.to)}
        width={right - left - 2 * wall + 2 * groove}
        height={v.bottomTongue * scale}
      />
      <rect
        class="thing"
        x={left + wall + 8}
        y={up(floor + v.contentsHeight)}
        width={right - left - 2 * wall - 16}
        height={v.contentsHeight * scale}
      />
      <NumberLabel
        class="halo"
        x={(left + right) / 2}
        y={up(floor + v.contentsHeight / 2)}
        value={v.contentsHeight}
        kind="length"
        before="contents "
      />
      <NumberLabel
        x={(left + right) / 2}
        y={up((inside!.to + floor + v.contentsHeight) / 2)}
        value={v.headroom}
        kind="length"
        before="room above "
      />
      <NumberLabel
        class="halo"
        x={(left + right) / 2}
        y={up((bottom!.from + bottom!.to) / 2)}
        value={v.bottomTongue}
        kind="length"
        before="bottom "
      />
      <NumberLabel
        x={(left + right) / 2}
        y={up(lip!.to / 2)}
        value={v.bottomLip}
        kind="length"
        before="below it "
      />
      {!open && (
        <>
          <NumberLabel x={330} y={26} anchor="end" value={v.lidThickness} kind="length" before="lid " />
          <NumberLabel x={330} y={46} anchor="end" value={v.lidLip} kind="length" before="and above it " />
        </>
      )}
      {mark !== undefined && <path class="ghost" d={`M${left - 20} ${place(mark)}H${right + 20}`} />}
      {!open && (
        <Label x={6} y={up(50)} anchor="start">
          how high?
        </Label>
      )}
    </Drawing>
  );
}
