/**
 * The gap beside the bottom through a year of air: a wave between its dampest and its driest day, held central and
 * crept aside, between the zone where it jams and the zone where it drops out. Drawn in units of a phone's pixels.
 */

import { playAt } from '../../box/subjects/movement/panel-state.ts';
import type { Values } from '../../box/whole/index.ts';
import { equilibriumMoisture } from '../../calc/air/moisture.ts';
import { panelPractice } from '../../calc/movement/panel.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, axesOn, curve, Plot, Zone } from '../plot/Plot.tsx';

const frame = { left: 6, right: 344, top: 6, bottom: 232 } as const;
const { left, right, top, bottom } = frame;
const steps = 24;

export function PanelYear({ values: v }: { values: Values }) {
  const groove = v.grooveDepth;
  const lowest = Math.min(v.humidityDry, v.humidityToday, v.humidityDamp);
  const highest = Math.max(v.humidityDry, v.humidityToday, v.humidityDamp);
  // From dampest over driest to dampest: a cosine in humidity, turned to moisture and to play.
  const plays = Array.from({ length: steps + 1 }, (_, i) => {
    const humidity = (lowest + highest + (highest - lowest) * Math.cos((2 * Math.PI * i) / steps)) / 2;
    return playAt(v, 'bottom', equilibriumMoisture(v.temperature, humidity));
  });
  const known = plays.every(Number.isFinite);
  const least = known ? Math.min(...plays) / 2 : 0;
  const high = groove * 1.14;
  const low = Math.min(-0.16 * groove, least * 1.3);
  const axes = axesOn(frame, [0, steps], [low, high]);
  // Words and marks stay inside the area; a line that leaves it is cut off.
  const [x, y] = [axes.x, axes.y.copy().clamp(true)];
  const path = (share: number) =>
    curve(
      axes,
      plays.map((play, i) => [i, play * share]),
    );
  const today = y(v.bottomGap);
  const rightCrossing = plays.findIndex((play, i) => i > steps / 2 && play <= 2 * v.bottomGap) || steps * 0.8;
  const spoken = (gap: number) => said(gap, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, 350, 262]}
      title="The gap beside the bottom through a year of air"
      description={
        known
          ? `Held central, the gap at each side runs from ${spoken(Math.min(...plays) / 2)} at the dampest to ${spoken(Math.max(...plays) / 2)} at the driest. Below 0 the bottom jams; at ${spoken(groove)}, the depth of the groove, it drops out.`
          : 'There is no movement figure for this wood in this air.'
      }
    >
      <Plot on={axes}>
        <Zone on={axes} y={[groove - panelPractice.panelEngagementCrept, groove]} class="held-barely" />
        <Zone on={axes} y={[groove, high]} fill="url(#jam)" />
        <Zone on={axes} y={[low, 0]} fill="url(#jam)" />
        <path class="axis" d={across(axes, { y: [0, groove] })} />
        {known && (
          <>
            <path class="hidden-line" d={path(1)} />
            <path class="curve" d={path(0.5)} />
            <path class="thin" d={across(axes, { y: [v.bottomGap] })} />
          </>
        )}
      </Plot>
      <Label class="on-lines" x={175} y={(bottom + y(0)) / 2}>
        jams: no gap left
      </Label>
      <NumberLabel
        class="on-lines"
        x={175}
        y={(top + y(groove)) / 2}
        value={groove}
        kind="length"
        before="drops out: gap of "
      />
      <Label x={left + 6} y={y(groove - 0.42 * panelPractice.panelEngagementCrept)} anchor="start">
        barely held
      </Label>
      {known && (
        <>
          <Label class="on-lines" x={175} y={y(plays[steps / 2]!) - 11}>
            crept to one side
          </Label>
          <Label class="on-lines" x={175} y={y(plays[steps / 2]! / 2) - 11}>
            central
          </Label>
          <circle class="mark" cx={x(rightCrossing)} cy={today} r="4" />
          <NumberLabel
            class="on-lines"
            x={175}
            y={(today + y(0)) / 2}
            value={v.bottomGap}
            kind="length"
            as="fine"
            before="today "
          />
        </>
      )}
      {['dampest', 'driest', 'dampest'].map((word, i) => (
        <Label
          key={i}
          x={[left, 175, right][i]!}
          y={bottom + 17}
          anchor={(['start', 'middle', 'end'] as const)[i]!}
        >
          {word}
        </Label>
      ))}
    </Drawing>
  );
}
