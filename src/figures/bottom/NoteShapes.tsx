/**
 * The notes of a bottom: from above, how it swings in the six lowest (light goes up while dark goes down, the lines between
 * stay still), and below them its notes along a scale, beside those of a thin bottom.
 */
import type { Mode } from '../../calc/bottom/modes.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { axesOn } from '../plot/Plot.tsx';

interface Props {
  /** Along and across the grain, mm. */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly thin: number;
  /** The lowest dozen of this bottom, and of the thin one. */
  readonly notes: readonly Mode[];
  readonly thinNotes: readonly Mode[];
}

/** Widest and highest a panel is drawn; distance from one to the next. */
const [wide, high, step] = [100, 70, 118] as const;
/** Highest note on the scale, Hz. */
const most = 4000;

const hertz = (f: number) => said(f, 'number', { digits: 0 });

export function NoteShapes({ length, width, thickness, thin, notes, thinNotes }: Props) {
  const scale = Math.min(wide / length, high / width);
  const [w, h] = [length * scale, width * scale];
  const shapes = notes.slice(0, 6);
  const ladder = 2 * (h + 34) + 66;
  const on = axesOn({ left: 12, right: 338, top: ladder, bottom: ladder + 74 }, [0, most], [0, 1]);
  const marks = (of: readonly Mode[], y: number) =>
    of
      .filter(({ f }) => f <= most)
      .map(({ f }) => `M${on.x(f).toFixed(1)} ${y}v22`)
      .join('');
  return (
    <Drawing
      view={[0, 0, 350, ladder + 100]}
      title="How the bottom swings in its six lowest notes, and its notes on a scale"
      description={`Notes of the bottom ${said(thickness, 'length')} thick, half waves along by across: ${shapes
        .map(({ m, n, f }) => `${m} by ${n} at ${hertz(f)}`)
        .join(
          ', ',
        )} hertz. The lowest of one ${said(thin, 'length', { denominator: 16 })} thick is ${hertz(thinNotes[0]!.f)} hertz.`}
    >
      {shapes.map(({ m, n, f }, i) => {
        const [x, y] = [7 + (i % 3) * step + (wide - w) / 2, 6 + Math.floor(i / 3) * (h + 34)];
        const cells = Array.from({ length: m * n }, (_, k) => [k % m, Math.floor(k / m)] as const);
        return (
          <g key={`${m} ${n}`}>
            <rect class="wood" x={x} y={y} width={w} height={h} />
            <path
              class="wood-end"
              d={cells
                .filter(([k, l]) => (k + l) % 2 === 1)
                .map(([k, l]) => `M${x + (k * w) / m} ${y + (l * h) / n}h${w / m}v${h / n}h${-w / m}z`)
                .join('')}
            />
            <Label x={x + w / 2} y={y + h + 14}>{`${hertz(f)} Hz`}</Label>
          </g>
        );
      })}
      <NumberLabel
        x={12}
        y={ladder - 12}
        anchor="start"
        value={thickness}
        kind="length"
        after=" thick, its notes"
      />
      <path class="curve" d={marks(notes, ladder)} />
      <path class="axis" d={`M${on.left} ${ladder + 22}H${on.right}`} />
      <NumberLabel
        x={12}
        y={ladder + 40}
        anchor="start"
        value={thin}
        kind="length"
        denominator={16}
        after=" thick"
      />
      <path class="thin" d={marks(thinNotes, ladder + 52)} />
      <path class="axis" d={`M${on.left} ${on.bottom}H${on.right}`} />
      <Ticks on={on} side="below" at={[0, 1000, 2000, 3000]} />
      <Label x={on.right} y={on.bottom + 14} anchor="end">
        {`${most} Hz`}
      </Label>
      <Label x={12} y={2 * (h + 34) + 10} anchor="start">
        light goes up while dark goes down
      </Label>
    </Drawing>
  );
}
