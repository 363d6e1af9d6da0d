/** A box beside a glass, both to one scale: how high three coats for its outside stand in the glass is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { format, INCH, type UnitSystem } from '../../units/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked, mm³. */
export const glassRange = { low: 0, high: 120e3 } as const;
/** Inside diameter of the glass, mm. */
const glassWide = 40;
const [boxLeft, boxLong, table, glassLeft] = [12, 200, 150, 232] as const;
/** Drawing units for a mm: the guess is about a box of about this length, mm. */
const scale = boxLong / 172;
/** Height of so much in the glass, drawing units. */
const filled = (volume: number) => (volume / (Math.PI * (glassWide / 2) ** 2)) * scale;
const middle = glassLeft + (glassWide * scale) / 2;
export const glassFrame: GuessFrame = {
  width: 350,
  height: 190,
  from: [middle, table],
  to: [middle, table - filled(glassRange.high)],
};
const place = (volume: number) => placeIn(glassFrame, glassRange, volume)[1];

/** Marks on the glass, mm³. */
const marks = {
  mm: Array.from({ length: 7 }, (_, i) => i * 20e3),
  inch: Array.from({ length: 8 }, (_, i) => i * INCH ** 3),
} as const;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function FinishGlass({ values: v, system, mark, open }: Props) {
  const { outsideLength: L, outsideHeight: H, outsideWidth: b, outsideFinish: truth } = v;
  const right = glassLeft + glassWide * scale;
  const rim = place(glassRange.high) - 12;
  const volume = (value: number) => said(value, 'volume', { digits: 0 });
  return (
    <Drawing
      view={[0, 0, glassFrame.width, glassFrame.height]}
      title="A box, and the glass for its finish"
      description={`The box is ${said(L, 'length')} long, ${said(b, 'length')} wide and ${said(H, 'length')} high; the glass is ${said(glassWide, 'length')} wide, drawn to the same scale. ${
        open
          ? `Three coats on the outside take ${volume(truth)}.`
          : 'How much three coats on the outside take is not drawn yet.'
      }`}
    >
      <rect class="wood" x={boxLeft} y={table - H * scale} width={L * scale} height={H * scale} />
      <path class="axis" d={`M4 ${table}H346`} />
      <Dimension
        from={[boxLeft, table + 16]}
        to={[boxLeft + L * scale, table + 16]}
        value={L}
        text={13}
        side="after"
      />
      <NumberLabel
        class="on-lid"
        x={boxLeft + (L * scale) / 2}
        y={table - (H * scale) / 2}
        value={H}
        kind="length"
        before="high "
      />
      <NumberLabel
        x={boxLeft + (L * scale) / 2}
        y={table - H * scale - 14}
        value={b}
        kind="length"
        before="wide "
      />
      {open && (
        <g class="arrives">
          <rect
            class="water"
            x={glassLeft}
            y={place(truth)}
            width={right - glassLeft}
            height={table - place(truth)}
          />

          <Label class="on-lines" x={middle} y={place(truth) - 12}>
            {format(truth, 'volume', { system, unit: false, digits: 1 })}
          </Label>
        </g>
      )}
      {mark !== undefined && (
        <rect
          class="ghost bare"
          x={glassLeft}
          y={place(mark)}
          width={right - glassLeft}
          height={table - place(mark)}
        />
      )}
      <path class="curve" d={`M${glassLeft} ${rim}V${table}H${right}V${rim}`} />
      <path class="thin" d={marks[system].map((at) => `M${right} ${place(at)}h7`).join('')} />
      {marks[system].map((at, i) =>
        i % 2 === 0 ? (
          <Label key={at} x={right + 11} y={place(at) - (at === 0 ? 7 : 0)} anchor="start">
            {format(at, 'volume', { system, unit: false, digits: 0 })}
          </Label>
        ) : null,
      )}
      <Label x={right + 9} y={rim - 12}>
        {system === 'mm' ? 'cm³' : 'in³'}
      </Label>
    </Drawing>
  );
}
