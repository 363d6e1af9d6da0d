/** How two tapped bottoms fade: the thin one's ring is drawn until a thousandth is left, that of the thick one is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { firstTapFrequency } from '../../calc/bottom/bottom.ts';
import { panelOf } from '../../calc/bottom/panel-woods.ts';
import { lossOfWood, ringTime } from '../../calc/bottom/tap.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Time that can be marked, s. */
export const ringRange = { low: 0, high: 0.6 } as const;
const [left, right, thinAt, thickAt, half, foot] = [16, 334, 62, 164, 28, 212] as const;
export const ringFrame: GuessFrame = { width: 350, height: 262, from: [left, thickAt], to: [right, thickAt] };
const place = (seconds: number) => placeIn(ringFrame, ringRange, seconds)[0];

/** Time until a thousandth of the lowest note is left, s, of flat-sawn walnut so many times the bottom's thickness. */
export const ringOf = (v: Values, times: 1 | 0.5): number => {
  const size = { a: v.insideLength, b: v.insideWidth, h: v.bottomThickness * times };
  return ringTime.compute({
    f: firstTapFrequency.compute(panelOf('walnut', 'flat', size)),
    eta: lossOfWood,
  });
};

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

const seconds = (value: number) => said(value, 'number', { digits: 2 });

export function RingGuess({ values: v, mark, open }: Props) {
  const [thin, thick] = [ringOf(v, 0.5), ringOf(v, 1)];
  /** Decibels fall evenly, so a ring is a wedge. */
  const wedge = (y: number, until: number) =>
    `M${left} ${y - half}L${place(until)} ${y}L${left} ${y + half}z`;
  return (
    <Drawing
      view={[0, 0, ringFrame.width, ringFrame.height]}
      title="Two bottoms after a tap, as they fade"
      description={`The one ${said(v.bottomThickness / 2, 'length')} thick rings ${seconds(thin)} seconds until a thousandth of its swing is left. ${
        open
          ? `The one ${said(v.bottomThickness, 'length')} thick rings ${seconds(thick)} seconds.`
          : `How long the one ${said(v.bottomThickness, 'length')} thick rings is not drawn yet.`
      }`}
    >
      <NumberLabel
        x={left}
        y={16}
        anchor="start"
        value={v.bottomThickness / 2}
        kind="length"
        after=" thick"
      />
      <Label x={right} y={16} anchor="end">{`rings ${seconds(thin)} s`}</Label>
      <path class="held-barely" d={wedge(thinAt, thin)} />
      <path class="curve" d={wedge(thinAt, thin)} />
      <NumberLabel
        x={left}
        y={thickAt - 46}
        anchor="start"
        value={v.bottomThickness}
        kind="length"
        after=" thick"
      />
      {open && <Label x={right} y={thickAt - 46} anchor="end">{`rings ${seconds(thick)} s`}</Label>}
      <path class="axis" d={`M${left} ${thickAt}H${right}`} />
      <path class="curve" d={`M${left} ${thickAt - half}v${2 * half}`} />
      {open && (
        <g class="arrives">
          <path class="held-barely" d={wedge(thickAt, thick)} />
          <path class="curve" d={wedge(thickAt, thick)} />
        </g>
      )}
      {mark !== undefined && <path class="ghost" d={wedge(thickAt, mark)} />}
      <path
        class="thin"
        d={`M${left} ${foot}H${right}${[0, 1, 2, 3, 4, 5, 6].map((tenths) => `M${place(tenths / 10)} ${foot}v${tenths % 2 ? 4 : 8}`).join('')}`}
      />
      {[0, 0.2, 0.4].map((time) => (
        <Label key={time} x={place(time)} y={foot + 18}>
          {time}
        </Label>
      ))}
      <Label x={right + 8} y={foot + 18} anchor="end">
        0.6 s
      </Label>
      <Label x={left - 4} y={foot + 40} anchor="start">
        height: decibels, down to a thousandth
      </Label>
    </Drawing>
  );
}
