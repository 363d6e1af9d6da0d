/** Cup of a flat-sawn board against its distance from the pith: the exact line, and the short formula as far as it holds. */

import { cupExact, cupNarrow, NARROW } from '../../calc/board/cup.ts';
import type { Shrinkages } from '../../calc/board/log-map.ts';
import { INCH } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { type Axes, across, axesOn, curve, evenly, Plot, Zone } from '../plot/Plot.tsx';

export interface CupByDistanceProps {
  /** mm */
  width: number;
  /** From the pith to the face, mm. */
  distance: number;
  shrinkages: Shrinkages;
  description: string;
}

const frame = { left: 8, right: 338, top: 26, bottom: 190 } as const;
const { left, right, top, bottom } = frame;
const [nearest, farthest] = [10, 300] as const;

/** The largest 1, 2 or 5 with its decimal point somewhere that is at most this. */
const tickBelow = (most: number) => {
  const tens = 10 ** Math.floor(Math.log10(most));
  return tens * (most >= 5 * tens ? 5 : most >= 2 * tens ? 2 : 1);
};

/** A level line at a round depth, mm, written in one of the two units. */
function DepthLine({ on, unit }: { on: Axes; unit: 'mm' | 'inch' }) {
  const one = unit === 'inch' ? INCH : 1;
  const shown = tickBelow(on.y.domain()[1]! / one);
  return (
    <g class={unit}>
      <path class="thin" d={across(on, { y: [shown * one] })} stroke-dasharray="1 4" />
      <Label x={right - 4} y={on.y(shown * one) - 8} anchor="end" class="on-lines">
        {Number(shown.toPrecision(2))} {unit === 'inch' ? 'in' : 'mm'}
      </Label>
    </g>
  );
}

export function CupByDistance({ width: w, distance, shrinkages, description }: CupByDistanceProps) {
  const { radial: S_R, tangential: S_T } = shrinkages;
  const exact = (R: number) => Math.abs(cupExact.compute({ w, R, S_R, S_T }));
  const narrow = (R: number) => Math.abs(cupNarrow.compute({ w, R, S_R, S_T }));
  const holdsFrom = Math.max(nearest, w / NARROW);
  const most = Math.max(exact(nearest), 0.01) * 1.1;
  const axes = axesOn(frame, [nearest, farthest], [0, most]);
  const line = (of: (R: number) => number, from: number) =>
    curve(
      axes,
      evenly([from, farthest], 40).map((R) => [R, of(R)]),
    );
  const [x, y] = [axes.x(distance), axes.y(exact(distance))];
  return (
    <Drawing view={[0, 0, 350, 236]} title="Cup by distance from the pith" description={description}>
      <Plot on={axes} />
      {holdsFrom < farthest && (
        <>
          <Zone on={axes} x={[holdsFrom, farthest]} class="usual" />
          <path class="narrow" d={line(narrow, holdsFrom)} />
          <Label x={right - 4} y={top + 12} anchor="end">
            narrow formula holds
          </Label>
        </>
      )}
      <DepthLine on={axes} unit="mm" />
      <DepthLine on={axes} unit="inch" />
      <path class="curve" d={line(exact, nearest)} />
      <AxisLines on={axes} />
      <line class="thin" x1={x} x2={x} y1={y} y2={bottom} />
      <circle class="mark" cx={x} cy={y} r="4" />
      <NumberLabel
        x={x > 250 ? x - 6 : x + 8}
        y={y - 12}
        anchor={x > 250 ? 'end' : 'start'}
        value={exact(distance)}
        kind="length"
        as="fine"
        class="on-lines"
      />
      <Label x={left} y={12} anchor="start">
        depth of the cup
      </Label>
      {/* Whole numbers of each reader's own unit. */}
      <g class="mm">
        <Ticks on={axes} at={[50, 150, 250].map((R) => [R, `${R} mm`])} side="below" />
      </g>
      <g class="inch">
        <Ticks on={axes} at={[2, 4, 8, 11].map((R) => [R * INCH, `${R} in`])} side="below" />
      </g>
      <Label x={right} y={bottom + 32} anchor="end">
        from the pith to the face
      </Label>
    </Drawing>
  );
}
