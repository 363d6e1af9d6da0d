/** Cup of a flat-sawn board against its distance from the pith: the exact line, and the short formula as far as it holds. */
import { cupExact, cupNarrow, NARROW } from '../calc/cup.ts';
import type { Shrinkages } from '../calc/log-map.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

export interface CupByDistanceProps {
  /** mm */
  width: number;
  /** From the pith to the face, mm. */
  distance: number;
  shrinkages: Shrinkages;
  description: string;
}

const [left, right, top, bottom] = [8, 338, 26, 190] as const;
const [nearest, farthest] = [10, 300] as const;
const xOf = (R: number) => left + ((R - nearest) / (farthest - nearest)) * (right - left);

/** The largest 1, 2 or 5 with its decimal point somewhere that is at most this. */
const tickBelow = (most: number) => {
  const tens = 10 ** Math.floor(Math.log10(most));
  return tens * (most >= 5 * tens ? 5 : most >= 2 * tens ? 2 : 1);
};

/** A level line at a round depth, mm, written in one of the two units. */
function Tick({
  size,
  unit,
  y,
  ...rest
}: {
  size: number;
  unit: 'mm' | 'in';
  y: (cup: number) => number;
  class: string;
}) {
  const shown = unit === 'in' ? size / 25.4 : size;
  return (
    <g class={rest.class}>
      <line class="thin" x1={left} x2={right} y1={y(size)} y2={y(size)} stroke-dasharray="1 4" />
      <Label x={right - 4} y={y(size) - 8} anchor="end" class="on-lines">
        {Number(shown.toPrecision(2))} {unit}
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
  const yOf = (cup: number) => bottom - (cup / most) * (bottom - top);
  const line = (of: (R: number) => number, from: number) =>
    `M${Array.from({ length: 41 }, (_, i) => {
      const R = from + (i / 40) * (farthest - from);
      return `${xOf(R).toFixed(1)} ${yOf(of(R)).toFixed(1)}`;
    }).join('L')}`;
  const [x, y] = [xOf(distance), yOf(exact(distance))];
  return (
    <Drawing view={[0, 0, 350, 236]} title="Cup by distance from the pith" description={description}>
      <rect class="plot" x={left} y={top} width={right - left} height={bottom - top} />
      {holdsFrom < farthest && (
        <>
          <rect
            class="usual"
            x={xOf(holdsFrom)}
            y={top}
            width={right - xOf(holdsFrom)}
            height={bottom - top}
          />
          <path class="narrow" d={line(narrow, holdsFrom)} />
          <Label x={right - 4} y={top + 12} anchor="end">
            narrow formula holds
          </Label>
        </>
      )}
      <Tick class="mm" size={tickBelow(most)} unit="mm" y={yOf} />
      <Tick class="inch" size={tickBelow(most / 25.4) * 25.4} unit="in" y={yOf} />
      <path class="curve" d={line(exact, nearest)} />
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <line class="thin" x1={x} x2={x} y1={y} y2={bottom} />
      <circle class="mark" cx={x} cy={y} r="4" />
      <NumberLabel
        x={x > 250 ? x - 6 : x + 8}
        y={y - 12}
        anchor={x > 250 ? 'end' : 'start'}
        value={exact(distance)}
        kind="length"
        digits={2}
        denominator={1000}
        class="on-lines"
      />
      <Label x={left} y={12} anchor="start">
        depth of the cup
      </Label>
      {/* Whole numbers of each reader's own unit. */}
      <g class="mm">
        {[50, 100, 200, 300].map((R) => (
          <Label key={R} x={xOf(R)} y={bottom + 12} anchor={R === 300 ? 'end' : 'middle'}>
            {R} mm
          </Label>
        ))}
      </g>
      <g class="inch">
        {[2, 4, 8, 11].map((R) => (
          <Label key={R} x={xOf(R * 25.4)} y={bottom + 12}>
            {R} in
          </Label>
        ))}
      </g>
      <Label x={right} y={bottom + 32} anchor="end">
        from the pith to the face
      </Label>
    </Drawing>
  );
}
