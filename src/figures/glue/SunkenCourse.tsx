/** How deep a glue line sinks, by the day on which it is leveled; the usual days of waiting, and what is not known better than twofold. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { axesOn, band, curve, evenly, Plot, type Span, Zone } from '../plot/Plot.tsx';
import { creepOf, sinksAfter } from './glue-line.ts';

/** Days of the plot; before the first day no joint is leveled. */
const days: Span = [1, 14];
/** Days that are usual for show work: common practice. */
const usualDays: Span = [3, 7];
/** Ends of the upright axis, mm. */
const depths = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5] as const;

export function SunkenCourse({ values: v }: { values: Values & { readonly daysWaited: number } }) {
  const { low, middle, high } = creepOf(v);
  const on_ = evenly(days, 40);
  const all = on_.map((day) => {
    const both = [sinksAfter(v, day, low), sinksAfter(v, day, high)];
    return [day, Math.min(...both), Math.max(...both)] as const;
  });
  const most = Math.max(...all.map(([, , top]) => top));
  const deep = depths.find((one) => one >= most) ?? depths.at(-1)!;
  const on = axesOn({ left: 74, right: 334, top: 34, bottom: 190 }, [0, days[1]], [0, deep]);
  const now = sinksAfter(v, v.daysWaited);
  const at = Math.min(v.daysWaited, days[1]);
  const right = on.x(at) < 210;
  /** Above the band, so that the number stands on no line. */
  const above = Math.max(sinksAfter(v, at, low), sinksAfter(v, at, high));
  return (
    <Drawing
      view={[0, 0, 350, 242]}
      title="How deep the line sinks, by the day it is leveled"
      description={`In walls of ${said(v.wall, 'length')} leveled after ${said(v.daysWaited, 'days', { digits: 1 })} it sinks ${said(now, 'length', { digits: 2, denominator: 1000 })}. The band is what is not known better. Three to seven days are usual for show work.`}
    >
      <Plot on={on}>
        <Zone on={on} x={usualDays} fill="url(#band)" />
        <path class="spread" d={band(on, all)} />
        <path
          class="curve"
          d={curve(
            on,
            on_.map((day): Span => [day, sinksAfter(v, day, middle)]),
          )}
        />
      </Plot>
      <AxisLines on={on} />
      <circle class="ready" cx={on.x(at)} cy={on.y(Math.min(now, deep))} r="5" />
      <NumberLabel
        class="on-lines"
        x={on.x(at) + (right ? 4 : -4)}
        y={on.y(Math.min(above, deep)) - (at > 3 ? 16 : 8)}
        anchor={right ? 'start' : 'end'}
        value={now}
        kind="length"
        as="exact"
        digits={2}
      />
      <Label x={on.left} y={16} anchor="start">
        sinks on each face
      </Label>
      <Label class="on-lines" x={(on.x(usualDays[0]) + on.x(usualDays[1])) / 2} y={on.top + 12}>
        usual
      </Label>
      <NumberLabel x={on.left - 6} y={on.top} anchor="end" value={deep} kind="length" as="exact" digits={2} />
      <NumberLabel x={on.left - 6} y={on.bottom} anchor="end" value={0} kind="length" as="exact" digits={2} />
      <Ticks on={on} at={[1, 3, 7, 14]} side="below" />
      <Label x={on.right} y={on.bottom + 34} anchor="end">
        leveled after so many days
      </Label>
    </Drawing>
  );
}
