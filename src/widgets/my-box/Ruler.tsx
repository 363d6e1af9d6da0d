/**
 * The ruler of a control: marks of the reader's ruler, above its edge the band where every rule is kept and where something
 * breaks, and a pointer at the number.
 */
import type { Bands } from '../../box/design/bands.ts';
import type { Stretch } from '../../box/design/trials.ts';
import { lineAt, placeOf, type Window } from './ruler-window.ts';

interface Props {
  window: Window;
  /** px */
  width: number;
  /** In steps; not whole where the number lies between two marks. */
  at: number;
  step: number;
  binary: boolean;
  bands: Bands | undefined;
  /** The number below a step. */
  label: (count: number) => string;
}

/** Height of the band, and of the ruler below its edge, px. */
const [band, body] = [10, 36];
const rulerHeight = band + body;

export function Ruler({ window, width, at, step, binary, bands, label }: Props) {
  const { from, to } = window;
  const place = (count: number) => placeOf(count, window, width);
  const counts = Array.from({ length: to - from + 1 }, (_, off) => from + off);
  const half = Math.min(5, (place(from + 1) - place(from)) * 0.45);
  /** A band is as wide as its marks and a little to each side, so that one mark alone has width too. */
  const stretch = ([low, high]: Stretch, name: string) => {
    const [first, last] = [Math.max(from, low / step), Math.min(to, high / step)];
    if (last < first - 1e-6) return null;
    const x = place(first) - half;
    return (
      <rect
        key={`${name}${low}`}
        class={name}
        x={x.toFixed(1)}
        y="1"
        width={(place(last) + half - x).toFixed(1)}
        height={band - 1}
      />
    );
  };
  const x = Math.min(width - 6, Math.max(6, place(at))).toFixed(1);
  return (
    <svg
      class="ruler-drawing"
      viewBox={`0 0 ${width} ${rulerHeight}`}
      height={rulerHeight}
      aria-hidden="true"
    >
      <rect class="rule" x="0.5" y={band} width={width - 1} height={body - 0.5} />
      {bands?.kept.map((one) => stretch(one, 'band-kept'))}
      {bands?.breaks.map((one) => stretch(one, 'band-breaks'))}
      <path
        class="marks"
        d={counts
          .map((count) => `M${place(count).toFixed(1)} ${band}v${lineAt(count, binary, window.label)}`)
          .join('')}
      />
      {counts
        .filter((count) => count % window.label === 0)
        .map((count) => (
          <text
            key={count}
            x={place(count).toFixed(1)}
            y={rulerHeight - 5}
            text-anchor={anchorAt(place(count), width)}
          >
            {label(count)}
          </text>
        ))}
      <path class="pointer" d={`M${x} ${band + 13}v8m-6-21h12v9l-6 5-6-5z`} />
    </svg>
  );
}

/** Numbers at the ends stay on the sheet. */
const anchorAt = (x: number, width: number) => (x < 16 ? 'start' : x > width - 16 ? 'end' : 'middle');
