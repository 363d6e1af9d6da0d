/** The edge of a lid cut across, enlarged: what it grows in its width is drawn, what it grows in its thickness is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Growth that can be marked, mm. */
export const thickRange = { low: 0, high: 1.6 } as const;
const face = 190;
const side = 150;
const foot = 262;
export const thickFrame: GuessFrame = { width: 350, height: 270, from: [76, face], to: [76, 46] };
const place = (mm: number) => placeIn(thickFrame, thickRange, mm)[1];
const enlarged = (face - 46) / thickRange.high;

/** What the width grows over the year, mm. */
export const widthOverYear = (v: Values): number => v.lidPlayDry - v.lidPlayDamp;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ThicknessGuess({ values: v, system, mark, open }: Props) {
  const wide = widthOverYear(v);
  const thick = v.lidThicknessYear;
  const out = side + wide * enlarged;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, thickFrame.width, thickFrame.height]}
      title="The edge of a lid, cut across, over a year"
      description={`From the driest day to the dampest the lid grows ${fine(wide)} in its width. In its thickness of ${said(v.lidTongue, 'length', { digits: 1 })} it ${
        open ? `grows ${fine(thick)}.` : 'grows too; how much is not drawn yet.'
      }`}
    >
      <path class="wood-end" d={`M2 ${foot}V${face}H${side}V${foot}`} />
      <rect class="grown" x={side} y={face} width={wide * enlarged} height={foot - face} />
      <Label class="on-wood" x={12} y={foot - 16} anchor="start">
        lid, driest day
      </Label>
      <NumberLabel
        x={Math.min(out, 248)}
        y={face - 14}
        anchor="end"
        value={wide}
        kind="length"
        as="exact"
        before="wider: "
      />
      {open ? (
        <g class="arrives">
          <rect class="grown" x={2} y={place(thick)} width={side - 2} height={face - place(thick)} />
          <NumberLabel
            x={4}
            y={place(thick) - 14}
            anchor="start"
            value={thick}
            kind="length"
            as="exact"
            before="thicker: "
          />
        </g>
      ) : (
        mark === undefined && <path class="hidden-line" d={`M2 ${place(wide)}H${side}V${face}`} />
      )}
      {mark !== undefined && <path class="ghost" d={`M2 ${place(mark)}H${side}V${face}`} />}
      <Label x={2} y={14} anchor="start">
        {`growth drawn ${Math.round(enlarged)} times life size`}
      </Label>
      <RuleScale
        from={[286, face]}
        to={[286, place(thickRange.high)]}
        length={thickRange.high}
        system={system}
      />
    </Drawing>
  );
}
