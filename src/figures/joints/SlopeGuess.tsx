/** A tail seen from the face of its wall, and the length of its cheek against a straight one: how much the slope adds is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { slopeGain, tailSpread } from '../../calc/joints/dovetail.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked, percent. */
export const gainRange = { low: 0, high: 20 } as const;
const [zero, foot] = [92, 250] as const;
export const gainFrame: GuessFrame = {
  width: 350,
  height: 300,
  from: [zero, foot - 20],
  to: [zero + 230, foot - 20],
};
const at = (percent: number) => placeIn(gainFrame, gainRange, percent)[0];

/** What the slope adds to the glue area, percent. */
export const gainOf = ({ dovetailSlope: s }: Values) => slopeGain.compute({ s });

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

const ticks = [0, 5, 10, 15, 20] as const;

export function SlopeGuess({ values: v, mark, open }: Props) {
  const { wall: t, dovetailSlope: s } = v;
  const scale = 88 / t;
  const spread = tailSpread.compute({ t, s }) * scale;
  const [left, top, deep, root] = [130, 22, 88, 78] as const;
  const gain = gainOf(v);
  return (
    <Drawing
      view={[0, 0, gainFrame.width, gainFrame.height]}
      title="A tail, and what its slope adds to the glue area"
      description={`The cheeks slope 1 in ${s} in a wall ${said(t, 'length')} thick. ${
        open
          ? `The slope adds ${said(gain, 'percent', { digits: 1 })}.`
          : 'What the slope adds is not drawn yet.'
      }`}
    >
      <path class="wood" d={`M${left - 52} ${top + deep}h${2 * 52 + root}v46h${-2 * 52 - root}z`} />
      <path
        class="wood"
        d={`M${left} ${top + deep}L${left - spread} ${top}h${root + 2 * spread}L${left + root} ${top + deep}`}
      />
      <path
        class="hidden-line"
        d={`M${left} ${top + deep}V${top - 8}M${left + root} ${top + deep}V${top - 8}`}
      />
      <Label x={left + root + spread + 14} y={top + deep / 2} anchor="start">
        1 in {s}
      </Label>
      <Label x={left - spread - 14} y={top + deep / 2} anchor="end">
        one cheek
      </Label>
      <path class="axis" d={`M${at(0)} ${foot}H${at(20)}`} />
      {ticks.map((percent) => (
        <g key={percent}>
          <path class="thin" d={`M${at(percent)} ${foot}v6`} />
          <NumberLabel
            x={at(percent)}
            y={foot + 18}
            value={percent}
            kind="percent"
            digits={0}
            before={percent ? '+' : ''}
          />
        </g>
      ))}
      <path class="wood" d={`M10 ${foot - 26}l5 5.5l-5 5.5l5 5.5l-5 5.5H${at(0)}v-22z`} />
      <Label class="on-lid" x={(10 + zero) / 2} y={foot - 15}>
        straight
      </Label>
      {open && (
        <g class="arrives">
          <rect
            class="part-finger"
            fill="url(#band)"
            x={at(0)}
            y={foot - 26}
            width={at(gain) - at(0)}
            height={22}
          />
          <NumberLabel
            x={at(gain) + 10}
            y={foot - 38}
            anchor="start"
            value={gain}
            kind="percent"
            digits={1}
            before="the slope adds "
          />
        </g>
      )}
      {mark !== undefined && <path class="ghost" d={`M${at(0)} ${foot - 26}H${at(mark)}v22H${at(0)}`} />}
    </Drawing>
  );
}
