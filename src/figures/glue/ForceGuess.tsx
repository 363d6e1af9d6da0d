/** A mitered corner from above and a scale of forces with one bucket of water on it; how many the guide asks for is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { clampForce, clampPressure } from '../../calc/glue/glue.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { axesOn } from '../plot/Plot.tsx';

/** Forces that can be marked, N. */
export const forceRange = { low: 0, high: 2000 } as const;
/** Weight of ten liters of water, N. */
const bucket = 98;
/** 100 lbf, N. */
const hundredPounds = 444.82;
const on = axesOn({ left: 18, right: 316, top: 180, bottom: 252 }, [0, forceRange.high], [0, 1]);
export const forceFrame: GuessFrame = {
  width: 350,
  height: 284,
  from: [on.left, on.bottom - 64],
  to: [on.right, on.bottom - 64],
};
const place = (force: number) => placeIn(forceFrame, forceRange, force)[0];

/** Force that presses the two faces of a miter together at the least pressure a guide names for this wood, N. */
export const miterForce = (v: Values): number =>
  clampForce.compute({ p: clampPressure(v.specificGravity).low, A: v.miterArea });

/** A bucket on the scale, as wide as its weight. */
const pail = (from: number) => {
  const [x, w] = [place(from), place(bucket) - place(0)];
  return `M${x + 1} ${on.bottom - 20}l2 20h${w - 6}l2 -20zM${x + 1.5} ${on.bottom - 20}q${w / 2 - 1.5} -13 ${w - 3} 0`;
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ForceGuess({ values: v, system, mark, open }: Props) {
  const force = miterForce(v);
  const ticks = [0, 1, 2, 3, 4].map((n) => n * (system === 'mm' ? 500 : hundredPounds));
  const buckets = open ? Math.floor(Math.min(force, forceRange.high) / bucket) : 1;
  const t = 40;
  const [x, y] = [100, 46];
  return (
    <Drawing
      view={[0, 0, forceFrame.width, forceFrame.height]}
      title="A mitered corner from above, and a scale of forces"
      description={`The miter is ${said(v.jointedHeight, 'length')} high in walls ${said(v.wall, 'length')} thick. One bucket of water is drawn on the scale. ${
        open
          ? `The guide asks for ${said(force, 'force', { digits: 0 })}.`
          : 'What a glue maker’s guide asks for is not drawn yet.'
      }`}
    >
      <path class="wood" d={`M${x} ${y}h210v${t}h${t - 210}z`} />
      <path class="wood" d={`M${x} ${y}l${t} ${t}v68h${-t}z`} />
      <path class="curve" d={`M${x} ${y}l${t} ${t}`} />
      <path class="force" d={`M${x - 54} ${y + t / 2}H${x - 5}`} marker-end="url(#arrow)" />
      <path class="force" d={`M${x + t / 2} ${y - 40}V${y - 5}`} marker-end="url(#arrow)" />
      <NumberLabel
        x={x + 100}
        y={y + t / 2}
        class="on-lid"
        anchor="start"
        value={v.wall}
        kind="length"
        after=" wall"
      />
      <NumberLabel
        x={x + 96}
        y={y + t + 26}
        anchor="start"
        value={v.jointedHeight}
        kind="length"
        after=" high"
      />
      <g class={open ? 'arrives' : undefined}>
        <path class="thing" d={Array.from({ length: buckets }, (_, i) => pail(i * bucket)).join('')} />
      </g>
      {open && (
        <g class="arrives">
          <path
            class="curve"
            d={`M${place(Math.min(force, forceRange.high))} ${on.bottom - 64}V${on.bottom}`}
          />
          <NumberLabel
            x={Math.min(place(force), on.right - 30)}
            y={on.bottom - 78}
            value={force}
            kind="force"
            digits={0}
          />
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${place(mark)} ${on.bottom - 64}V${on.bottom}`} />}
      {!open && (
        <Label x={place(bucket) + 8} y={on.bottom - 12} anchor="start">
          one bucket of water
        </Label>
      )}
      <path class="axis" d={`M${on.left} ${on.bottom}H${on.right}`} />
      <Ticks on={on} at={ticks} side="below" kind="force" digits={0} away={16} />
    </Drawing>
  );
}
