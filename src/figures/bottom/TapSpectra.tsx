/**
 * What is in a tap on bottoms of several thicknesses: each note a line as high as the wood is fast, and at the foot how
 * much of every pitch the knuckle starts at all. What is played beside it is made from the same numbers.
 */
import { knuckleReach } from '../../calc/bottom/tap.ts';
import type { TapNote } from '../../calc/bottom/tap-notes.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

export interface TappedBottom {
  /** Thickness, mm. */
  readonly h: number;
  readonly notes: readonly TapNote[];
  /** How fast the wood moves in its lowest note, % of that of the first. */
  readonly speed: number;
}

/** Highest pitch shown, Hz, and the faintest, decibels under the loudest. */
const [most, faintest] = [2500, -40] as const;
const [left, right, high, row] = [34, 340, 46, 78] as const;

const decibels = (share: number) => Math.max(faintest, 20 * Math.log10(Math.max(share, 1e-9)));
const whole = (value: number) => said(value, 'number', { digits: 0 });

export function TapSpectra({ bottoms, contact }: { bottoms: readonly TappedBottom[]; contact: number }) {
  const loudest = Math.max(...bottoms.flatMap(({ notes }) => notes.map(({ swing }) => swing)));
  const frame = (i: number) =>
    axesOn({ left, right, top: 24 + i * row, bottom: 24 + i * row + high }, [0, most], [faintest, 0]);
  const foot = frame(bottoms.length);
  return (
    <Drawing
      view={[0, 0, 350, foot.bottom + 48]}
      title="The notes in a tap on four bottoms, and what the knuckle starts"
      description={`${bottoms
        .map(
          ({ h, notes: [first], speed }) =>
            `${said(h, 'length', { denominator: 16 })} thick: lowest note ${whole(first!.f)} hertz, ${whole(speed)} % as fast as the first, ring ${said(first!.ring, 'number', { digits: 2 })} seconds`,
        )
        .join('. ')}.`}
    >
      {bottoms.map(({ h, notes }, i) => {
        const on = frame(i);
        const heard = notes.filter(({ f, swing }) => f < most && decibels(swing / loudest) > faintest);
        return (
          <g key={h}>
            <NumberLabel
              x={left}
              y={on.top - 12}
              anchor="start"
              value={h}
              kind="length"
              denominator={16}
              after={` thick: from ${whole(notes[0]!.f)} Hz`}
            />
            <Plot on={on}>
              <path class="axis" stroke-dasharray="2 3" d={across(on, { y: [-20] })} />
              <path
                class="error-bar"
                stroke-width={3.5}
                d={heard
                  .map(
                    ({ f, swing }) =>
                      `M${on.x(f).toFixed(1)} ${on.bottom}V${on.y(decibels(swing / loudest)).toFixed(1)}`,
                  )
                  .join('')}
              />
            </Plot>
            <Ticks
              on={on}
              side="left"
              at={[
                [0, '0'],
                [-20, '−20'],
              ]}
            />
          </g>
        );
      })}
      <Label x={left} y={foot.top - 12} anchor="start">
        {`what a knuckle starts in ${said(contact, 'number', { digits: 1 })} ms`}
      </Label>
      <Plot on={foot}>
        <path class="axis" stroke-dasharray="2 3" d={across(foot, { y: [-20] })} />
        <path
          class="curve"
          d={curve(
            foot,
            evenly([1, most], 250).map((f) => [f, decibels(knuckleReach.compute({ f, T: contact }) / 100)]),
          )}
        />
      </Plot>
      <Ticks
        on={foot}
        side="left"
        at={[
          [0, '0'],
          [-20, '−20'],
        ]}
      />
      <Ticks on={foot} side="below" at={[0, 500, 1000, 1500]} />
      <Label x={right} y={foot.bottom + 14} anchor="end">
        {`${most} Hz`}
      </Label>
      <Label x={left} y={foot.bottom + 34} anchor="start">
        height: speed, decibels under the fastest
      </Label>
    </Drawing>
  );
}
