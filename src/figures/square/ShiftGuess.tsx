/**
 * A box from above whose diagonals differ by a little, at true size, and its upper right corner many times larger: how far
 * the far end stands aside is guessed there.
 */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What can be marked, mm. */
export const shiftRange = { low: 0, high: 3 } as const;
const [left, right, glass, foot] = [70, 310, 258, 338] as const;
/** Drawing units for a mm under the glass. */
const large = (right - left) / shiftRange.high;
export const shiftFrame: GuessFrame = {
  width: 350,
  height: 374,
  from: [left, foot - 26],
  to: [right, foot - 26],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ShiftGuess({ values: v, system, mark, open }: Props) {
  const { insideLength: a, insideWidth: b, wall, diagonalsApart: D } = v;
  const scale = Math.min(300 / (a + 2 * wall), 190 / (b + 2 * wall));
  const [w, h, t] = [a * scale, b * scale, wall * scale];
  const x = (350 - w) / 2;
  const y = t + 8;
  const at = (mm: number) => left + mm * large;
  return (
    <Drawing
      view={[0, 0, shiftFrame.width, shiftFrame.height]}
      title="The box from above, and its far right corner enlarged"
      description={`Inside it is ${said(a, 'length')} long and ${said(b, 'length')} wide. One diagonal is ${said(D, 'length', { as: 'fine' })} longer than the other. ${
        open
          ? `The far end stands ${said(v.endShift, 'length', { as: 'fine' })} aside.`
          : 'How far the far end stands aside is not drawn yet.'
      }`}
    >
      <path
        class="wood"
        fill-rule="evenodd"
        d={`M${x - t} ${y - t}h${w + 2 * t}v${h + 2 * t}h${-w - 2 * t}zM${x} ${y}h${w}v${h}h${-w}z`}
      />
      <path class="curve" d={`M${x} ${y + h}l${w} ${-h}M${x} ${y}l${w} ${h}`} />
      <circle class="thin" fill="none" cx={x + w} cy={y} r="13" />
      <NumberLabel
        class="on-lines"
        x={x + w * 0.5}
        y={y + h * 0.2}
        value={D}
        kind="length"
        as="exact"
        before="this one "
        after=" longer"
      />
      <path class="thin" d={`M${x + w * 0.66} ${y + h * 0.25}L${x + w * 0.72} ${y + h * 0.28}`} />
      <path class="hidden-line" d={`M${left} ${glass}V${foot}`} />
      <Label x={left - 30} y={glass - 14} anchor="start">
        the ringed corner, enlarged
      </Label>
      <Label x={left - 6} y={glass + 12} anchor="end">
        square
      </Label>
      {open && (
        <g class="arrives">
          <path class="wood" d={`M${at(v.endShift)} ${glass + 6}h26V${foot - 8}h-26z`} />
          <path class="curve" d={`M${at(v.endShift)} ${glass}V${foot}`} />
        </g>
      )}
      {mark !== undefined && <path class="ghost" d={`M${at(mark)} ${glass}V${foot}`} />}
      <RuleScale from={[left, foot]} to={[right, foot]} length={shiftRange.high} system={system} />
    </Drawing>
  );
}
