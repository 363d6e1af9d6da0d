/** What presses on each mm of the bottom's lip, on a scale where each line is ten times the last; hatched where it splits. */
import type { Values } from '../../box/whole/index.ts';
import { thumbWidth } from '../../calc/grooves/grooves.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, axesOn, evenly, Zone } from '../plot/Plot.tsx';

const row = 46;
const [left, right, top] = [8, 342, 26];
/** Decades of N/mm; the other axis counts the loads. */
const decades = [-3, 2] as const;
const inDecades = (load: number) => Math.max(decades[0], Math.min(Math.log10(load), decades[1]));
const perMm = (load: number) => said(load, 'lineLoad');

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
  const axes = axesOn({ left, right, top, bottom: top + loads.length * row }, decades, [loads.length, 0]);
  const { bottom } = axes;
  const x = (load: number) => axes.x(inDecades(load));
  const known = Number.isFinite(v.bottomLipLoad);
  const limit = x(v.bottomLipLoad);
  return (
    <Drawing
      view={[0, 0, 350, bottom + 30]}
      title="Loads on the lip below the bottom"
      description={`${loads.map(([name, load]) => `${name}: ${perMm(load)}`).join('; ')}. The lip splits at ${perMm(v.bottomLipLoad)}.`}
    >
      {known && <Zone on={axes} x={[inDecades(v.bottomLipLoad), decades[1]]} fill="url(#jam)" />}
      <path class="thin" stroke-dasharray="2 4" d={across(axes, { x: evenly(decades, 5) })} />
      <path class="axis" d={`M${left} ${bottom}H${right}`} />
      {known && (
        <>
          <path class="axis" stroke-width="2" d={across(axes, { x: [inDecades(v.bottomLipLoad)] })} />
          <NumberLabel
            x={Math.max(120, Math.min(limit, 290))}
            y={top - 11}
            value={v.bottomLipLoad}
            kind="lineLoad"
            before="lip splits at "
          />
        </>
      )}
      {loads.map(([name, load], index) => {
        const y = axes.y(index + 0.72);
        return (
          <g key={name}>
            <Label x={left + 4} y={y - 19} anchor="start" class="on-lines">
              {name}
            </Label>
            <line class="force" x1={left} y1={y} x2={x(load)} y2={y} />
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
      <Label x={(left + right) / 2} y={bottom + 14}>
        each line: ten times the load
      </Label>
    </Drawing>
  );
}
