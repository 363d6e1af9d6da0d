/**
 * A panel in both its grooves, cut across the box's width: the whole in true proportion, below it the two edges
 * magnified at the driest, today and at the dampest, held central and crept to the left. Units are a phone's pixels.
 */

import { panelOf, playAt } from '../../box/subjects/movement/panel-state.ts';
import type { PanelName } from '../../box/subjects/movement/results.ts';
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Magnified edge: solid wood beside the groove, the groove, and the height of wall, groove and panel. */
export const edge = { stub: 10, groove: 40, wall: 32, slot: 18, panel: 14 } as const;
export const column = { width: 168, lefts: [0, 182] } as const;

/** One state in one column: two walls, the panel with its middle cut out, and the gap in numbers. */
export function Edges({
  x,
  y,
  near,
  far,
  scale,
  groove,
}: {
  x: number;
  y: number;
  /** Gaps at the left and the right, mm. */
  near: number;
  far: number;
  scale: number;
  groove: number;
}) {
  const { stub, groove: deep, wall, slot, panel } = edge;
  const right = x + column.width;
  const middle = x + column.width / 2;
  const [jams, out] = [near + far < 0, far >= groove];
  const from = x + stub + Math.max(0, near) * scale;
  const to = right - stub - Math.max(0, far) * scale;
  const above = y + (wall - slot) / 2;
  const notch = (side: number, inward: 1 | -1) =>
    `M${side} ${y}h${inward * (stub + deep)}v${(wall - slot) / 2}h${-inward * deep}v${slot}h${inward * deep}v${(wall - slot) / 2}h${-inward * (stub + deep)}z`;
  const sheet = jams ? 'wood jammed' : 'wood';
  return (
    <>
      <path class="end" d={notch(x, 1) + notch(right, -1)} />
      <path
        class={sheet}
        d={`M${from} ${y + (wall - panel) / 2}H${Math.max(from, middle - 30)}v${panel}H${from}zM${to} ${y + (wall - panel) / 2}H${Math.min(to, middle + 30)}v${panel}H${to}z`}
      />
      {jams || out ? (
        <Label class="warning" x={middle} y={above + slot / 2}>
          {jams ? 'jams' : 'drops'}
        </Label>
      ) : (
        <NumberLabel x={middle} y={above + slot / 2} value={far} kind="length" as="exact" />
      )}
    </>
  );
}

export function PanelSection({ values: v, part = 'bottom' }: { values: Values; part?: PanelName }) {
  const { groove, width, play, thickness } = panelOf(v, part);
  const whole = 346 / v.outsideWidth;
  const scale = edge.groove / groove;
  const lip = part === 'bottom' ? v.bottomLip : v.lidLip;
  const shown = lip + thickness + 6;
  const wallWidth = v.wall * whole;
  const start = 2 + shown * whole + 22;
  const states = [
    ['driest', v.moistureDry],
    ['today', v.moistureToday],
    ['dampest', v.moistureDamp],
  ] as const;
  const spoken = states
    .map(([word, moisture]) => `${word} ${said(playAt(v, part, moisture), 'length', { as: 'fine' })}`)
    .join(', ');
  const sides = ([0, 1] as const).map((i) => 2 + i * (346 - wallWidth));
  return (
    <Drawing
      view={[0, 0, 350, start + 30 + 3 * 60]}
      title={`The ${part} in its two grooves`}
      description={`Play of the ${part}, both sides together: ${spoken}.`}
    >
      {sides.map((x) => (
        <rect key={x} class="end" x={x} y={2} width={wallWidth} height={shown * whole} />
      ))}
      <rect
        class="inside"
        x={2 + wallWidth - groove * whole}
        y={2 + (part === 'bottom' ? 6 : lip) * whole}
        width={346 - 2 * wallWidth + 2 * groove * whole}
        height={thickness * whole}
      />
      <rect
        class="wood"
        x={2 + wallWidth + (play / 2 - groove) * whole}
        y={2 + (part === 'bottom' ? 6 : lip) * whole}
        width={width * whole}
        height={thickness * whole}
      />
      <Label x={2} y={start - 10} anchor="start">
        {`Below: both edges ${Math.round(scale / whole)} times larger, middle left out`}
      </Label>
      <Label x={column.lefts[0]} y={start + 14} anchor="start">
        central: each gap
      </Label>
      <Label x={column.lefts[1]} y={start + 14} anchor="start">
        crept: gap at right
      </Label>
      {states.map(([word, moisture], i) => {
        const y = start + 30 + i * 60;
        const now = playAt(v, part, moisture);
        return (
          <g key={word}>
            <NumberLabel
              x={0}
              y={y + 6}
              anchor="start"
              value={moisture}
              kind="percent"
              before={`${word}, `}
              after=" moisture"
            />
            {Number.isFinite(now) ? (
              <>
                <Edges x={column.lefts[0]} y={y + 17} near={now / 2} far={now / 2} {...{ scale, groove }} />
                <Edges
                  x={column.lefts[1]}
                  y={y + 17}
                  near={Math.min(0, now)}
                  far={now}
                  {...{ scale, groove }}
                />
              </>
            ) : (
              <Label x={175} y={y + 30}>
                no figure for this wood in this air
              </Label>
            )}
          </g>
        );
      })}
    </Drawing>
  );
}

/** The same for the sliding lid. */
export const LidSection = ({ values }: { values: Values }) => <PanelSection values={values} part="lid" />;
