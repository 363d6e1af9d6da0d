/** Four rules of thumb about gaps, as the rise in moisture that each allows for the box's bottom, beside the rise of the reader's air. */
import type { Values } from '../../box/whole/index.ts';
import { riseForAllowance } from '../../calc/movement/panel-play.ts';
import { INCH } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What each takes off a panel of that width in all, mm. */
const sayings: readonly (readonly [string, (width: number) => number])[] = [
  ['1/16 in off the width', () => INCH / 16],
  ['1/8 in per foot', (width) => width / 96],
  ['1/16 in at each side', () => INCH / 8],
  ['1/4 in per foot', (width) => width / 48],
];
const [left, right, most] = [4, 346, 12] as const;
const x = (points: number) => left + ((right - left) * Math.min(points, most)) / most;

export function GapSayings({ values: v }: { values: Values }) {
  const rise = v.moistureDamp - v.moistureToday;
  const allowed = sayings.map(([, off]) =>
    riseForAllowance.compute({ T: off(v.bottomWidth), W: v.bottomWidth, C: v.movementUp }),
  );
  const points = (value: number) => said(value, 'points', { digits: 1 });
  return (
    <Drawing
      view={[0, 0, 350, 4 * 44 + 30]}
      title="The rise in moisture that each rule of thumb allows"
      description={`${sayings.map(([words], i) => `${words}: ${points(allowed[i]!)}`).join('; ')}. From today to the dampest day: ${points(rise)}.`}
    >
      {sayings.map(([words], i) => {
        const y = i * 44 + 4;
        const enough = allowed[i]! >= rise;
        return (
          <g key={words}>
            <Label x={left} y={y + 8} anchor="start">
              {`${words}: ${points(allowed[i]!)}, ${enough ? 'enough' : 'jams'}`}
            </Label>
            <rect
              class={enough ? 'wood' : 'wood jammed'}
              x={left}
              y={y + 18}
              width={Math.max(0, x(allowed[i]!) - left) || 0}
              height={14}
            />
          </g>
        );
      })}
      <path class="force" d={sayings.map((_, i) => `M${x(rise)} ${i * 44 + 18}v22`).join('')} />
      <NumberLabel
        x={left}
        y={4 * 44 + 18}
        anchor="start"
        value={rise}
        kind="points"
        before="mark: your air’s rise, "
        after={`; bars end at ${most}`}
      />
    </Drawing>
  );
}
