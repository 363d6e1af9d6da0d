/** The upper edge of a wall cut across, with the lid in its groove: how thick the lip above must be to take a push. */
import type { Values } from '../../box/whole/index.ts';
import { lipForPush, thumbWidth } from '../../calc/grooves/grooves.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Lips that can be marked, mm: as far as the rule goes. */
export const lipRange = { low: 0, high: (5 / 16) * INCH } as const;
const [outside, top] = [128, 30] as const;
const scale = 20;
const inside = outside + 8 * scale;
export const lipFrame: GuessFrame = {
  width: 350,
  height: 320,
  from: [outside + 5 * scale, top],
  to: [outside + 5 * scale, top + lipRange.high * scale],
};
const place = (mm: number) => placeIn(lipFrame, lipRange, mm)[1];

/** Thinnest lip above the lid's groove that takes the push, mm; NaN where the wood's strength across is not known. */
export const lipNeeded = (v: Values): number =>
  lipForPush.compute({ F: v.push, sigma_t: v.tensionPerpendicular, a: thumbWidth, d: v.lidGrooveDepth });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function LipGuess({ values: v, system, mark, open }: Props) {
  const needed = lipNeeded(v);
  const lip = open ? needed : (mark ?? 0);
  const splits = open && mark !== undefined && mark < needed;
  const high = v.lidThickness * scale * 0.8;
  const root = inside - v.lidGrooveDepth * scale;
  const [upper, lower] = [place(lip), place(lip) + high];
  const foot = 308;
  return (
    <Drawing
      view={[0, 0, lipFrame.width, lipFrame.height]}
      title="The lip above the lid’s groove, cut across"
      description={`The groove is ${said(v.lidGrooveDepth, 'length')} deep, and a thumb pushes the lid up with ${said(v.push, 'force', { digits: 0 })}. ${
        open
          ? `The lip must be ${said(needed, 'length', { as: 'fine', round: 'up' })} thick to take it.`
          : 'How thick the lip must be is not drawn yet.'
      }`}
    >
      <path
        class="wood-end"
        d={`M${outside} ${top}H${inside}V${upper}H${root}V${lower}H${inside}V${foot}H${outside}z`}
      />
      {splits && (
        <rect class="wood jammed" x={root} y={top} width={inside - root} height={place(mark) - top} />
      )}
      <rect class="wood" x={root + 4} y={upper + 1.5} width={348 - root - 4} height={high - 3} />
      <path class="force" d={`M${inside - 8} ${lower + 34}V${lower + 4}`} marker-end="url(#arrow)" />
      <NumberLabel
        x={inside + 6}
        y={lower + 24}
        anchor="start"
        value={v.push}
        kind="force"
        digits={0}
        before="push "
      />
      {mark !== undefined && <path class="ghost" d={`M${root} ${top}H${inside}V${place(mark)}H${root}z`} />}
      {open && (
        <g class="arrives">
          <path class="truth" d={`M${outside - 20} ${place(needed)}H${inside + 10}`} />
          <NumberLabel
            x={inside + 12}
            y={place(needed) - 12}
            anchor="start"
            value={needed}
            kind="length"
            as="exact"
            round="up"
          />
        </g>
      )}
      {splits && (
        <Label class="warning" x={inside + 12} y={top + 8} anchor="start">
          yours splits
        </Label>
      )}
      <Label class="on-wood" x={outside + 8} y={foot - 14} anchor="start">
        wall
      </Label>
      <Label x={344} y={(upper + lower) / 2} anchor="end">
        lid
      </Label>
      <RuleScale
        from={[outside - 44, top]}
        to={[outside - 44, place(lipRange.high)]}
        length={lipRange.high}
        system={system}
      />
    </Drawing>
  );
}
