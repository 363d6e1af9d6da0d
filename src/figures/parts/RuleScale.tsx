/** A piece of the reader's rule beside a drawing, level or upright: what a mark is read on. */
import { format, INCH, type UnitSystem } from '../../units/index.ts';
import { Label } from './Label.tsx';

interface Props {
  /** Ends of the scale in the drawing's user units: of zero, and of `length`. */
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  /** What lies between them, mm. */
  length: number;
  system: UnitSystem;
}

/** Divisions of a rule, mm: the finest drawn, and those that carry a number. */
const divisions = { mm: [0.5, 1], inch: [INCH / 64, INCH / 16] } as const;
/** Fewest user units between two numbers. */
const room = 34;

export function RuleScale({ from: [x1, y1], to: [x2, y2], length, system }: Props) {
  const upright = x1 === x2;
  const [fine, numbered] = divisions[system];
  const way = Math.hypot(x2 - x1, y2 - y1);
  /** Every number, or every second, fourth, … where they would run into each other. */
  const every = [1, 2, 4, 8, 16, 32].find((n) => (numbered * n * way) / length >= room) ?? 64;
  const step = [1, 2, 4, 8].find((n) => (fine * n * way) / length >= 3.5) ?? 16;
  const count = Math.floor(length / (fine * step) + 1e-6);
  const perNumber = Math.round(numbered / fine);
  const place = (mm: number) => [x1 + ((x2 - x1) * mm) / length, y1 + ((y2 - y1) * mm) / length] as const;
  const ticks = Array.from({ length: count + 1 }, (_, i) => i * step);
  const high = (i: number) => (i % (perNumber * every) === 0 ? 9 : i % perNumber === 0 ? 7 : 4);
  return (
    <g class="rule-scale">
      <path
        class="thin"
        d={ticks
          .map((i) => {
            const [x, y] = place(i * fine);
            return upright
              ? `M${x.toFixed(1)} ${y.toFixed(1)}h${high(i)}`
              : `M${x.toFixed(1)} ${y.toFixed(1)}v${high(i)}`;
          })
          .join('')}
      />
      <path class="thin" d={`M${x1} ${y1}L${x2} ${y2}`} />
      {ticks
        .filter((i) => i % (perNumber * every) === 0)
        .map((i) => {
          const [x, y] = place(i * fine);
          const text = format(i * fine, 'length', { system, unit: false });
          return upright ? (
            <Label key={i} x={x + 12} y={y} anchor="start">
              {text}
            </Label>
          ) : (
            <Label key={i} x={x} y={y + 18}>
              {text}
            </Label>
          );
        })}
      {upright ? (
        <Label x={x1 + 12} y={Math.max(y1, y2) + 16} anchor="start">
          {system === 'mm' ? 'mm' : 'in'}
        </Label>
      ) : (
        <Label x={Math.min(x1, x2) - 10} y={y1 + 18} anchor="end">
          {system === 'mm' ? 'mm' : 'in'}
        </Label>
      )}
    </g>
  );
}
