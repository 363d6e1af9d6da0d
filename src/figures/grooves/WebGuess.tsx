/** A wall with a groove, and beside it two bars: what the whole wall bears, and what is guessed to be left behind the groove. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

export const strengthRange = { low: 0, high: 100 } as const;
const [top, foot] = [34, 194] as const;
const bars = { whole: 200, left: 276, width: 56 } as const;
export const webFrame: GuessFrame = {
  width: 350,
  height: 216,
  from: [bars.left + bars.width / 2, foot],
  to: [bars.left + bars.width / 2, top],
};
const place = (percent: number) => placeIn(webFrame, strengthRange, percent)[1];

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function WebGuess({ values: v, mark, open }: Props) {
  const scale = 90 / v.wall;
  const depth = v.grooveDepth * scale;
  const bar = (x: number, percent: number, name: string) => (
    <rect class={name} x={x} y={place(percent)} width={bars.width} height={foot - place(percent)} />
  );
  return (
    <Drawing
      view={[0, 0, webFrame.width, webFrame.height]}
      title="A wall with a groove, and the strength left behind it"
      description={`The wall is ${said(v.wall, 'length')} thick, the groove ${said(v.grooveDepth, 'length')} deep. ${
        open
          ? `${said(v.webStrength, 'percent', { digits: 0 })} of the strength are left, and ${said(v.webStiffness, 'percent', { digits: 0 })} of the stiffness.`
          : 'What is left of the strength is not drawn yet.'
      }`}
    >
      <path class="wood-end" d={`M30 ${top}h90v58h${-depth}v44h${depth}v58h-90z`} />
      <g class="dimension">
        <line
          x1={30}
          y1={top - 8}
          x2={120}
          y2={top - 8}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
        <NumberLabel x={75} y={top - 19} value={v.wall} kind="length" />
      </g>
      <NumberLabel x={126} y={top + 80} anchor="start" value={v.grooveDepth} kind="length" />
      <Label x={75} y={foot + 12}>
        wall
      </Label>
      {bar(bars.whole, 100, 'wood')}
      <Label x={bars.whole + bars.width / 2} y={foot + 12}>
        whole wall
      </Label>
      <rect class="inside" x={bars.left} y={top} width={bars.width} height={foot - top} />
      {open && <g class="arrives">{bar(bars.left, v.webStrength, 'wood')}</g>}
      {mark !== undefined && (
        <path class="ghost" d={`M${bars.left} ${foot}V${place(mark)}h${bars.width}V${foot}`} />
      )}
      <Label x={bars.left + bars.width / 2} y={foot + 12}>
        left of it
      </Label>
      {open && (
        <NumberLabel
          class="on-lines"
          x={bars.left + bars.width / 2}
          y={place(v.webStrength) - 10}
          value={v.webStrength}
          kind="percent"
          digits={0}
        />
      )}
      <Label x={(bars.whole + bars.left + bars.width) / 2} y={top - 19}>
        strength
      </Label>
    </Drawing>
  );
}
