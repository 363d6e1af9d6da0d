/** Two bottoms under the same soft knuckle: how far the thin one swings is drawn, how far one twice as thick does is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { firstTapFrequency } from '../../calc/bottom/bottom.ts';
import { panelOf } from '../../calc/bottom/panel-woods.ts';
import { firstSwing } from '../../calc/bottom/tap.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { bendingLine, free } from '../walls/bending-line.ts';

/** Swing that can be marked, % of the thin bottom's. */
export const swingRange = { low: 0, high: 100 } as const;
const [left, length, thinAt, thickAt, far] = [14, 270, 84, 222, 52] as const;
export const swingFrame: GuessFrame = {
  width: 350,
  height: 306,
  from: [left + length / 2, thickAt],
  to: [left + length / 2, thickAt + far],
};
const place = (percent: number) => placeIn(swingFrame, swingRange, percent)[1];

/** How long the knuckle stays, ms: the middle of 1 to 3, which is an estimate. */
const softKnuckle = 2;

/** Swing of the bottom's lowest note, % of that of one half as thick; flat-sawn walnut, tapped in the middle. */
export const doubledSwing = (v: Values): number => {
  const size = { a: v.insideLength, b: v.insideWidth, h: v.bottomThickness / 2 };
  return firstSwing.compute({
    h: v.bottomThickness,
    h_0: size.h,
    f_0: firstTapFrequency.compute(panelOf('walnut', 'flat', size)),
    T: softKnuckle,
  });
};

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function SwingGuess({ values: v, mark, open }: Props) {
  const scale = length / v.insideLength;
  const share = doubledSwing(v);
  const both = (y: number, by: number) =>
    bendingLine(free, left, y, length, by) + bendingLine(free, left, y, length, -by);
  const panel = (y: number, thick: number) => (
    <rect class="wood" x={left} y={y - (thick * scale) / 2} width={length} height={thick * scale} />
  );
  return (
    <Drawing
      view={[0, 0, swingFrame.width, swingFrame.height]}
      title="Two bottoms, cut through, after the same tap in the middle"
      description={`How far the one ${said(v.bottomThickness / 2, 'length')} thick swings is drawn, much enlarged. ${
        open
          ? `The one ${said(v.bottomThickness, 'length')} thick swings ${said(share, 'percent', { digits: 0 })} as far.`
          : `How far the one ${said(v.bottomThickness, 'length')} thick swings is not drawn yet.`
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
      {panel(thinAt, v.bottomThickness / 2)}
      <path class="curve" d={both(thinAt, far)} />
      <NumberLabel
        x={left}
        y={thickAt - far - 12}
        anchor="start"
        value={v.bottomThickness}
        kind="length"
        after=" thick"
      />
      {panel(thickAt, v.bottomThickness)}
      {open && (
        <g class="arrives">
          <path class="curve" d={both(thickAt, place(share) - thickAt)} />
          <NumberLabel
            x={left + length}
            y={thickAt - far - 12}
            anchor="end"
            value={share}
            kind="percent"
            digits={0}
            before="swings "
          />
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={both(thickAt, place(mark) - thickAt)} />}
      <path
        class="thin"
        d={`M${left + length + 14} ${thickAt}V${place(100)}${[0, 25, 50, 75, 100].map((percent) => `M${left + length + 14} ${place(percent)}h6`).join('')}`}
      />
      {[0, 50, 100].map((percent) => (
        <Label key={percent} x={left + length + 25} y={place(percent)} anchor="start">
          {percent} %
        </Label>
      ))}
      <Label x={left} y={swingFrame.height - 10} anchor="start">
        swing drawn much larger than it is
      </Label>
    </Drawing>
  );
}
