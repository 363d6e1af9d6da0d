/** Numbers as lengths, each with its words: where a rule is about time, water or how much of something. */
import type { Kind } from '../../units/index.ts';
import { Num, Sketch, Word } from './sketch.tsx';

interface Bar {
  readonly words: string;
  /** A length that the words end with, mm. */
  readonly size?: number;
  readonly value: number;
}

interface Props {
  title: string;
  bars: readonly Bar[];
  kind: Kind;
  digits?: 0 | 1 | 2;
  /** Where a limit stands. */
  limit?: Bar;
  as?: 'exact';
}

export function Bars({ title, bars, kind, digits, limit, as }: Props) {
  const most = Math.max(...bars.map(({ value }) => value), limit?.value ?? 0);
  const x = (value: number) => 8 + (value / most) * 104;
  const bottom = 8 + bars.length * 44;
  return (
    <Sketch title={title} height={bottom + (limit ? 20 : 4)}>
      {limit && (
        <>
          <path class="hidden-line" d={`M${x(limit.value)} 20V${bottom}`} />
          <Word of={limit.words} x={x(limit.value)} y={bottom + 10} />
        </>
      )}
      {bars.map(({ words, size, value }, i) => (
        <g key={words + size}>
          {size === undefined ? (
            <Word of={words} x={8} y={14 + i * 44} anchor="start" />
          ) : (
            <Num of={words} value={size} x={8} y={14 + i * 44} anchor="start" />
          )}
          <rect class="wood" x="8" y={24 + i * 44} width={x(value) - 8} height="16" />
          <Num
            value={value}
            kind={kind}
            digits={digits}
            as={as}
            x={x(value) + 6}
            y={32 + i * 44}
            anchor="start"
          />
        </g>
      ))}
    </Sketch>
  );
}

interface GlassProps {
  title: string;
  /** What the air could hold, and what is in it, in the same unit; drawn to one scale with `most`. */
  holds: number;
  has: number;
  most: number;
  /** °C */
  air: number;
}

/** Air as a glass: as high as what it could hold, filled with what it has. */
export function Glass({ title, holds, has, most, air }: GlassProps) {
  const [h, w] = [(holds / most) * 84, (has / most) * 84];
  return (
    <Sketch title={title} height={118}>
      <rect class="water" x="54" y={94 - w} width="60" height={w} />
      <path class="axis" d={`M54 ${94 - h}V94H114V${94 - h}`} fill="none" />
      <Num value={(has / holds) * 100} kind="percent" digits={0} x={84} y={94 - Math.max(w / 2, 10)} />
      <Num value={air} kind="temperature" digits={0} x={84} y={108} />
    </Sketch>
  );
}

/** A hygrometer, and the moisture that wood comes to in that air; percent. */
export function Dial({ title, humidity, moisture }: { title: string; humidity: number; moisture: number }) {
  const [x, y, r] = [84, 52, 44];
  const at = (percent: number, radius: number) => {
    const angle = ((percent - 50) / 100) * 1.5 * Math.PI;
    return `${(x + radius * Math.sin(angle)).toFixed(1)} ${(y - radius * Math.cos(angle)).toFixed(1)}`;
  };
  return (
    <Sketch title={title} height={124}>
      <circle class="inside" cx={x} cy={y} r={r} />
      <path
        class="thin"
        d={Array.from({ length: 11 }, (_, i) => `M${at(i * 10, r - 7)}L${at(i * 10, r - 2)}`).join('')}
      />
      <path class="curve" d={`M${x} ${y}L${at(humidity, r - 10)}`} />
      <circle class="mark" cx={x} cy={y} r="4" />
      <Num of="h" value={humidity} kind="percent" digits={0} x={x} y={y + 24} />
      <Num of="wood" value={moisture} kind="percent" digits={1} x={x} y={112} />
    </Sketch>
  );
}
