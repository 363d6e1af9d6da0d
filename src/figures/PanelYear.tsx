/**
 * The gap beside the bottom through a year of air: a wave between its dampest and its driest day, held central and
 * crept aside, between the zone where it jams and the zone where it drops out. Drawn in units of a phone's pixels.
 */
import { playAt } from '../box/panel-state.ts';
import type { Values } from '../box/values.ts';
import { equilibriumMoisture } from '../calc/moisture.ts';
import { panelPractice } from '../calc/panel.ts';
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

const [left, right, top, bottom] = [6, 344, 6, 232] as const;
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
  const x = (i: number) => left + ((right - left) * i) / steps;
  const y = (gap: number) =>
    bottom - ((bottom - top) * (Math.max(low, Math.min(gap, high)) - low)) / (high - low);
  const path = (share: number) =>
    plays.map((play, i) => `${i ? 'L' : 'M'}${x(i).toFixed(1)} ${y(play * share).toFixed(1)}`).join('');
  const today = y(v.bottomGap);
  const rightCrossing = plays.findIndex((play, i) => i > steps / 2 && play <= 2 * v.bottomGap) || steps * 0.8;
  const spoken = (gap: number) => format(gap, 'length', { system: 'mm', digits: 2 });
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
      <rect class="plot" x={left} y={top} width={right - left} height={bottom - top} />
      <rect
        class="held-barely"
        x={left}
        y={y(groove)}
        width={right - left}
        height={y(groove - panelPractice.panelEngagementCrept) - y(groove)}
      />
      <rect fill="url(#jam)" x={left} y={top} width={right - left} height={y(groove) - top} />
      <rect fill="url(#jam)" x={left} y={y(0)} width={right - left} height={bottom - y(0)} />
      <line class="axis" x1={left} y1={y(0)} x2={right} y2={y(0)} />
      <line class="axis" x1={left} y1={y(groove)} x2={right} y2={y(groove)} />
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
          <path class="hidden-line" d={path(1)} />
          <path class="curve" d={path(0.5)} />
          <line class="thin" x1={left} y1={today} x2={right} y2={today} />
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
            digits={2}
            before="today "
          />
        </>
      )}
      {['dampest', 'driest', 'dampest'].map((word, i) => (
        <Label
          key={x(i)}
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
