/** What presses on each mm of the bottom's lip, on a scale where each line is ten times the last; hatched where it splits. */
import type { Values } from '../box/values.ts';
import { thumbWidth } from '../calc/grooves.ts';
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

const [x0, x1, y0] = [8, 342, 26];
const row = 46;
/** Decades of N/mm on the scale. */
const [low, high] = [-3, 2];
const x = (load: number) =>
  x0 + ((Math.min(high, Math.max(low, Math.log10(load))) - low) / (high - low)) * (x1 - x0);
const perMm = (load: number) => format(load, 'lineLoad', { system: 'mm' });

export function LoadsOnLip({ values: v }: { values: Values }) {
  /** The reader's push, spread as the lip's own figure is. */
  const push = v.push / (thumbWidth + 2 * v.grooveDepth);
  // A box outside the range of a formula has no such line.
  const loads = (
    [
      ['1 kg of contents at rest', v.contentsLoad],
      ['the same, box dropped', v.dropLoad],
      ['your push at one place', push],
    ] as const
  ).filter(([, load]) => Number.isFinite(load));
  const foot = y0 + loads.length * row;
  const known = Number.isFinite(v.bottomLipLoad);
  const limit = x(v.bottomLipLoad);
  return (
    <Drawing
      view={[0, 0, 350, foot + 30]}
      title="Loads on the lip below the bottom"
      description={`${loads.map(([name, load]) => `${name}: ${perMm(load)}`).join('; ')}. The lip splits at ${perMm(v.bottomLipLoad)}.`}
    >
      {known && <rect fill="url(#jam)" x={limit} y={y0} width={x1 - limit} height={foot - y0} />}
      <path
        class="thin"
        stroke-dasharray="2 4"
        d={Array.from({ length: high - low + 1 }, (_, n) => `M${x(10 ** (low + n))} ${y0} V${foot}`).join('')}
      />
      <line class="axis" x1={x0} y1={foot} x2={x1} y2={foot} />
      {known && (
        <>
          <line class="axis" stroke-width="2" x1={limit} y1={y0} x2={limit} y2={foot} />
          <NumberLabel
            x={Math.max(120, Math.min(limit, 290))}
            y={y0 - 11}
            value={v.bottomLipLoad}
            kind="lineLoad"
            before="lip splits at "
          />
        </>
      )}
      {loads.map(([name, load], index) => {
        const y = y0 + (index + 0.72) * row;
        return (
          <g key={name}>
            <Label x={x0 + 4} y={y - 19} anchor="start" class="on-lines">
              {name}
            </Label>
            <line class="force" x1={x0} y1={y} x2={x(load)} y2={y} />
            <circle class="mark" cx={x(load)} cy={y} r="5" />
            <NumberLabel
              x={x(load) + (x(load) > 230 ? -9 : 9)}
              y={y - (x(load) > 230 ? 10 : 0)}
              anchor={x(load) > 230 ? 'end' : 'start'}
              value={load}
              kind="lineLoad"
              class="on-lines"
            />
          </g>
        );
      })}
      <Label x={(x0 + x1) / 2} y={foot + 14}>
        each line: ten times the load
      </Label>
    </Drawing>
  );
}
