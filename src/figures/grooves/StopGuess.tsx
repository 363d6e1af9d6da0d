/**
 * A corner cut through at the height of the bottom's groove, from above: the wall whose finger runs to the outside, and its
 * neighbor with its own groove. Where the groove of the first must stop is guessed; open, the bottom lies in both.
 */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked as the distance from the end, mm. */
export const stopRange = { low: 0, high: 16 } as const;
const [end, right, outside, scale] = [40, 340, 250, 14] as const;
export const stopFrame: GuessFrame = {
  width: 350,
  height: 296,
  from: [end, outside - 92],
  to: [end + stopRange.high * scale, outside - 92],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function StopGuess({ values: v, mark, open }: Props) {
  const [t, g] = [v.wall * scale, v.grooveDepth * scale];
  const [face, floor] = [end + t, outside - t];
  const place = (mm: number) => placeIn(stopFrame, stopRange, mm)[0];
  const stop = end + v.grooveStop * scale;
  return (
    <Drawing
      view={[0, 0, stopFrame.width, stopFrame.height]}
      title="A corner cut through at the height of the groove, from above"
      description={`The walls are ${said(v.wall, 'length')} thick, the grooves ${said(v.grooveDepth, 'length')} deep. ${
        open
          ? `The groove stops ${said(v.grooveStop, 'length')} from the end, where the bottom ends.`
          : 'Where the groove must stop is not drawn yet.'
      }`}
    >
      <rect class="wood" x={end} y={floor} width={right - end} height={t} />
      <rect class="wood" x={end} y="14" width={t} height={floor - 14} />
      <rect class="inside" x={face - g} y="14" width={g} height={floor - 14} />
      {open ? (
        <g class="arrives">
          <rect class="inside" x={stop} y={floor} width={right - stop} height={g} />
          <path class="wood-end" d={`M${face - g} 14H${right}V${floor + g}H${face - g}z`} />
          <Label class="on-lines" x={(face + right) / 2} y={78}>
            the bottom
          </Label>
          <NumberLabel
            x={face + 16}
            y={outside + 34}
            anchor="start"
            value={v.grooveStop}
            kind="length"
            before="stops "
            after=" from the end"
          />
        </g>
      ) : (
        <>
          <rect class="inside" x={right - 70} y={floor} width="70" height={g} />
          <path class="hidden-line" d={`M${end + 4} ${floor + g}H${right - 70}`} />
          <Label x={right - 4} y={floor - 14} anchor="end">
            groove
          </Label>
        </>
      )}
      {mark !== undefined && <path class="ghost" d={`M${place(mark)} ${floor - 8}V${outside + 6}`} />}
      <Dimension from={[end, outside + 34]} to={[face, outside + 34]} value={v.wall} text={13} />
      <NumberLabel
        class="on-lines"
        x={face + 8}
        y={28}
        anchor="start"
        value={v.grooveDepth}
        kind="length"
        before="groove "
        after=" deep"
      />
    </Drawing>
  );
}
