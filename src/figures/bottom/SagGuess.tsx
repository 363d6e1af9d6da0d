/** Two bottoms under one load, one twice as thick as the other: the thin one's sag is drawn, the other's is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { panelSag } from '../../calc/bottom/bottom.ts';
import { panelOf } from '../../calc/bottom/panel-woods.ts';
import { sagShare } from '../../calc/bottom/tap.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { bendingLine, free } from '../walls/bending-line.ts';

/** Sag that can be marked, % of the thin bottom's. */
export const sagRange = { low: 0, high: 100 } as const;
const [left, length, thinAt, thickAt, deep] = [14, 270, 58, 196, 76] as const;
export const sagFrame: GuessFrame = {
  width: 350,
  height: 302,
  from: [left + length / 2, thickAt],
  to: [left + length / 2, thickAt + deep],
};
const place = (percent: number) => placeIn(sagFrame, sagRange, percent)[1];

/** Weight of 1 kg, N. */
const load = 9.81;

/** Sag of the bottom, % of that of one half as thick. */
export const doubledSag = (v: Values): number =>
  sagShare.compute({ h: v.bottomThickness, h_0: v.bottomThickness / 2 });

/** Sag of the thin one in the middle, mm: flat-sawn walnut under 1 kg, spread, four edges carried. */
export const thinSag = (v: Values): number =>
  panelSag(
    panelOf('walnut', 'flat', { a: v.insideLength, b: v.insideWidth, h: v.bottomThickness / 2 }),
    load,
  );

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function SagGuess({ values: v, mark, open }: Props) {
  const scale = length / v.insideLength;
  const [thin, thick] = [(v.bottomThickness / 2) * scale, v.bottomThickness * scale];
  const sag = thinSag(v);
  const share = doubledSag(v);
  const times = Math.round(deep / scale / sag / 10) * 10;
  /** A panel bent by `by`, its upper face at `y` at the ends. */
  const bent = (y: number, by: number, high: number) =>
    `${bendingLine(free, left, y, length, by)}v${high}${bendingLine(free, left + length, y + high, -length, by).replace(/^M[^c]*/, '')}z`;
  const pushed = (y: number) =>
    // None in the middle, where the handle of the mark stands.
    [0.5, 1.5, 2.5, 3.5, 4.5, 5.5].map((i) => (
      <path key={i} class="force" d={`M${left + (i * length) / 6} ${y - 26}v20`} marker-end="url(#arrow)" />
    ));
  return (
    <Drawing
      view={[0, 0, sagFrame.width, sagFrame.height]}
      title="Two bottoms, cut through along the grain, each under 1 kg (2.2 lb)"
      description={`The one ${said(v.bottomThickness / 2, 'length')} thick sags ${said(sag, 'length', { as: 'fine' })}. ${
        open
          ? `The one ${said(v.bottomThickness, 'length')} thick sags ${said(share, 'percent', { digits: 1 })} of that.`
          : `How far the one ${said(v.bottomThickness, 'length')} thick sags is not drawn yet.`
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
      <NumberLabel
        x={left + length}
        y={16}
        anchor="end"
        value={sag}
        kind="length"
        as="exact"
        before="sags "
      />
      <path class="hidden-line" d={`M${left} ${thinAt}h${length}`} />
      <path class="wood" d={bent(thinAt, deep, thin)} />
      {pushed(thinAt)}
      <NumberLabel
        x={left}
        y={thickAt - 40}
        anchor="start"
        value={v.bottomThickness}
        kind="length"
        after=" thick"
      />
      {open && (
        <NumberLabel
          x={left + length}
          y={thickAt - 40}
          anchor="end"
          value={share}
          kind="percent"
          digits={1}
          before="sags "
        />
      )}
      <path
        class={open ? 'wood arrives' : 'wood'}
        d={bent(thickAt, open ? place(share) - thickAt : 0, thick)}
      />
      <path class="hidden-line" d={`M${left} ${thickAt}h${length}`} />
      {pushed(thickAt)}
      {mark !== undefined && (
        <path class="ghost bare" d={bendingLine(free, left, thickAt, length, place(mark) - thickAt)} />
      )}
      <path
        class="thin"
        d={`M${left + length + 14} ${thickAt}V${place(100)}${[0, 25, 50, 75, 100].map((percent) => `M${left + length + 14} ${place(percent)}h6`).join('')}`}
      />
      {[0, 50, 100].map((percent) => (
        <Label key={percent} x={left + length + 25} y={place(percent)} anchor="start">
          {percent} %
        </Label>
      ))}
      <Label x={left} y={sagFrame.height - 10} anchor="start">
        {`sag drawn ${times} times larger`}
      </Label>
    </Drawing>
  );
}
